-- Which records these are, told apart from all others: those of a trial, or those that a backup was put back into, may know a shop by the
-- same id, and what is queued for one must never be taken by the workers of another. No backup holds it.
create table place (
  one boolean primary key default true check (one),
  id uuid not null default gen_random_uuid()
);
insert into place default values;
