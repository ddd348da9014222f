-- The ledger of stock only grows. What it comes to is kept beside it by the move itself, so that an order costs the same however
-- many went before: all moves added up by item, lot and kind, whoever they were for, and what a need holds already. Both say nothing
-- that the moves do not say; a backup leaves the sums out, and a restore makes them anew.

create table stock_sum (
  shop_id text not null references shop,
  item text not null,
  lot text not null,
  kind text not null,
  -- Counts that found less are kept apart from counts that found more: one is written off, the other received.
  less boolean not null,
  amount bigint not null,
  primary key (shop_id, item, lot, kind, less)
);
insert into stock_sum
  select shop_id, item, lot, kind, amount < 0, sum(amount) from stock_move group by shop_id, item, lot, kind, amount < 0;

-- What an order's reservations and releases took from the free pile.
create function held_of(of_shop text, of_order text, of_item text) returns bigint language sql stable set search_path from current as $$
  select coalesce(-sum(amount), 0)::bigint from stock_move
  where shop_id = of_shop and order_id = of_order and item = of_item and kind in ('reserve', 'release')
$$;

alter table stock_need add column held bigint not null default 0;
update stock_need set held = held_of(shop_id, order_id, item);
create index stock_lacking on stock_need (shop_id, item) where amount > held;

create function add_moves_up() returns trigger language plpgsql set search_path from current as $$
begin
  insert into stock_sum as kept (shop_id, item, lot, kind, less, amount)
    select shop_id, item, lot, kind, amount < 0, sum(amount) from moved group by 1, 2, 3, 4, 5 order by 1, 2, 3, 4, 5
    on conflict (shop_id, item, lot, kind, less) do update set amount = kept.amount + excluded.amount;
  update stock_need need set held = held - taken.amount
    from (
      select shop_id, order_id, item, sum(amount) as amount from moved
      where kind in ('reserve', 'release') and order_id is not null group by 1, 2, 3
    ) taken
    where need.shop_id = taken.shop_id and need.order_id = taken.order_id and need.item = taken.item;
  return null;
end
$$;
create trigger stock_move_adds_up after insert on stock_move referencing new table as moved
  for each statement execute function add_moves_up();

create function look_what_is_held() returns trigger language plpgsql set search_path from current as $$
begin
  new.held := held_of(new.shop_id, new.order_id, new.item);
  return new;
end
$$;
create trigger stock_need_holds before insert on stock_need for each row execute function look_what_is_held();

create function refuse_to_change_moves() returns trigger language plpgsql as $$
begin
  raise exception 'moves of stock are only added' using errcode = 'integrity_constraint_violation';
end
$$;
create trigger stock_move_only_added before update or delete on stock_move for each row execute function refuse_to_change_moves();
create trigger stock_move_never_emptied before truncate on stock_move for each statement execute function refuse_to_change_moves();
