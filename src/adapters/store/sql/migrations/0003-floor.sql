-- The floor: stock by lot, what orders want of it, templates on the shelf, checks of the presses, garments made again.

alter table stock_move drop constraint stock_move_kind_check;
alter table stock_move add constraint stock_move_kind_check
  check (kind in ('seed', 'arrive', 'count', 'reserve', 'release', 'use', 'write-off'));
alter table stock_move add column lot text not null default '';
alter table stock_move add column by text;
alter table stock_move add column why text;

create table stock_need (
  shop_id text not null references shop,
  order_id text not null,
  item text not null,
  amount bigint not null check (amount > 0),
  due integer not null,
  primary key (shop_id, order_id, item)
);

create table stock_lot (
  shop_id text not null references shop,
  item text not null,
  lot text not null,
  certificate text,
  gross_milligrams integer,
  bin text,
  primary key (shop_id, item, lot)
);

create table stock_coming (
  shop_id text not null references shop,
  coming_id text not null,
  item text not null,
  amount bigint not null check (amount > 0),
  due integer not null,
  by text not null,
  arrived boolean not null default false,
  primary key (shop_id, coming_id)
);

create table shelf_template (
  shop_id text not null references shop,
  key text not null,
  box text not null,
  made text not null,
  brushed integer not null check (brushed >= 0),
  primary key (shop_id, key)
);

create table press_check (
  shop_id text not null references shop,
  press text not null,
  day text not null,
  set_tenths integer not null,
  readings jsonb not null,
  correction_tenths integer not null,
  verdict text not null check (verdict in ('fit', 'corrected', 'not-fit')),
  by text not null,
  at integer not null,
  primary key (shop_id, press, day)
);

create table remake (
  shop_id text not null references shop,
  remake_id text not null,
  order_id text not null,
  ticket_id text not null,
  line integer not null,
  quantity integer not null check (quantity > 0),
  reason text not null,
  whose text not null,
  photo text,
  cost bigint not null,
  by text not null,
  at integer not null,
  done_at integer,
  primary key (shop_id, remake_id)
);
create index remake_of_order on remake (shop_id, order_id);

alter table key drop constraint key_kind_check;
alter table key add constraint key_kind_check check (kind in ('owner-link', 'pairing', 'session', 'customer', 'calendar'));
