-- The records of the shops. Every row carries its shop; business instants are whole minutes since 1970-01-01T00:00Z.

create table shop (
  shop_id text primary key,
  ticket_number integer not null default 0,
  opened_at timestamptz not null default now()
);

create table member (
  shop_id text not null references shop,
  member_id text not null,
  name text not null,
  role text not null check (role in ('owner', 'staff')),
  primary key (shop_id, member_id)
);

create table key (
  shop_id text not null references shop,
  kind text not null check (kind in ('owner-link', 'pairing', 'session', 'customer')),
  hash text not null,
  holder text not null,
  until integer,
  primary key (shop_id, kind, hash)
);

create table conversation (
  shop_id text not null references shop,
  conversation_id text not null,
  state jsonb not null,
  version integer not null default 1,
  primary key (shop_id, conversation_id)
);

create sequence message_change;

create table message (
  shop_id text not null references shop,
  message_id text not null,
  channel text not null,
  nonce text not null,
  seq bigint not null,
  changed bigint not null,
  edits integer not null default 0,
  by text not null,
  at timestamptz not null default now(),
  body jsonb not null,
  primary key (shop_id, message_id),
  unique (shop_id, nonce)
);
create index message_new on message (shop_id, channel, changed);

create table posted (
  shop_id text not null references shop,
  nonce text not null,
  message_id text not null,
  hash text not null,
  primary key (shop_id, nonce)
);

create table "order" (
  shop_id text not null references shop,
  order_id text not null,
  conversation_id text,
  state text not null,
  hold jsonb,
  revision integer not null default 0,
  handed_over_at integer,
  forgotten boolean not null default false,
  version integer not null default 1,
  primary key (shop_id, order_id)
);
create index order_by_state on "order" (shop_id, state);

create table order_revision (
  shop_id text not null,
  order_id text not null,
  revision integer not null check (revision > 0),
  hash text not null,
  document jsonb,
  signed_by text,
  signed_at integer,
  primary key (shop_id, order_id, revision),
  foreign key (shop_id, order_id) references "order"
);

create table row_state (
  shop_id text not null,
  order_id text not null,
  line integer not null,
  state text not null check (state in ('not-cut', 'cut', 'pressed', 'bagged')),
  primary key (shop_id, order_id, line),
  foreign key (shop_id, order_id) references "order"
);

create table quote (
  shop_id text not null,
  order_id text not null,
  revision integer not null,
  hash text not null,
  body jsonb not null,
  primary key (shop_id, order_id, revision, hash),
  foreign key (shop_id, order_id, revision) references order_revision
);

create table piece (
  shop_id text not null references shop,
  hash text not null,
  body jsonb not null,
  primary key (shop_id, hash)
);

create table piece_use (
  shop_id text not null,
  order_id text not null,
  hash text not null,
  primary key (shop_id, order_id, hash),
  foreign key (shop_id, hash) references piece
);
create index piece_users on piece_use (shop_id, hash);

create table ticket (
  shop_id text not null,
  ticket_id text not null,
  order_id text not null,
  revision integer not null,
  number integer not null,
  state text not null check (state in ('open', 'closed', 'done', 'replaced', 'cancelled')),
  replaced_by integer,
  body jsonb,
  version integer not null default 1,
  primary key (shop_id, ticket_id),
  unique (shop_id, number),
  unique (shop_id, order_id, revision),
  foreign key (shop_id, order_id, revision) references order_revision
);

create table ticket_step (
  shop_id text not null,
  ticket_id text not null,
  step integer not null,
  line integer not null,
  state text not null check (state in ('waiting', 'taken', 'started', 'done', 'spoiled')),
  by text,
  primary key (shop_id, ticket_id, step, line),
  foreign key (shop_id, ticket_id) references ticket
);

create table finding (
  shop_id text not null,
  finding_id bigint generated always as identity,
  ticket_id text not null,
  code text not null,
  facts jsonb not null,
  by text not null,
  at integer not null,
  primary key (shop_id, finding_id),
  foreign key (shop_id, ticket_id) references ticket
);
create index finding_of_ticket on finding (shop_id, ticket_id);

create table event (
  shop_id text not null references shop,
  event_id bigint generated always as identity,
  code text not null,
  order_id text,
  ticket_id text,
  by text not null,
  at integer not null,
  facts jsonb not null,
  primary key (shop_id, event_id)
);
create index event_of_order on event (shop_id, order_id);
create index event_by_time on event (shop_id, at);

create function refuse_change() returns trigger language plpgsql as $$
begin
  raise exception 'events are only added' using errcode = 'integrity_constraint_violation';
end
$$;
create trigger event_only_added before update or delete on event for each row execute function refuse_change();
create trigger event_never_emptied before truncate on event for each statement execute function refuse_change();

create table stock_move (
  shop_id text not null references shop,
  move_id bigint generated always as identity,
  item text not null,
  amount bigint not null,
  kind text not null check (kind in ('seed', 'reserve', 'release', 'use', 'count', 'arrive')),
  order_id text,
  at integer not null,
  primary key (shop_id, move_id)
);
create index stock_of_item on stock_move (shop_id, item);
create index stock_of_order on stock_move (shop_id, order_id);

create table plan (
  shop_id text primary key references shop,
  version integer not null,
  body jsonb not null
);

create table step (
  shop_id text not null,
  step text not null check (step in ('quote', 'plan', 'ticket', 'post')),
  order_id text not null,
  revision integer not null,
  attempt integer not null default 1,
  state text not null check (state in ('due', 'done', 'given-up')),
  reason text,
  sent_at timestamptz not null default now(),
  primary key (shop_id, order_id, revision, step),
  foreign key (shop_id, order_id, revision) references order_revision
);
create index step_unfinished on step (shop_id, state) where state <> 'done';

create table outbox (
  shop_id text not null references shop,
  outbox_id bigint generated always as identity primary key,
  step text not null,
  order_id text not null,
  revision integer not null,
  attempt integer not null,
  sent_at timestamptz
);
create index outbox_waiting on outbox (outbox_id) where sent_at is null;

create table file (
  shop_id text not null references shop,
  hash text not null,
  bytes bytea not null,
  primary key (shop_id, hash)
);

create table file_use (
  shop_id text not null,
  owner text not null,
  hash text not null,
  name text not null,
  mime text not null,
  primary key (shop_id, owner, hash),
  foreign key (shop_id, hash) references file
);
create index file_users on file_use (shop_id, hash);
