-- A change that is sent without waiting for its answer says for itself when it met no row: the transaction fails and is tried again.
create function must_meet(met boolean) returns void language plpgsql as $$
begin
  if not met then
    raise exception 'a record was changed meanwhile' using errcode = 'serialization_failure';
  end if;
end
$$;
