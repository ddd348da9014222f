-- The chat platform: which server is which shop, where customers talk, what stands there and what is still to be delivered.

create table server (
  shop_id text primary key references shop,
  guild text not null unique,
  name text not null,
  language text not null check (language in ('en', 'es')),
  talks text not null check (talks in ('direct', 'thread')),
  bench text,
  owner text,
  orders text,
  staff_roles text[] not null default '{}',
  owner_roles text[] not null default '{}'
);

-- A person's direct messages with us are one channel for all shops: the talk that was used last is the one held there.
create table talk (
  shop_id text not null references shop,
  conversation_id text not null,
  person text not null,
  channel text not null,
  language text not null check (language in ('en', 'es')),
  used_at timestamptz not null default clock_timestamp(),
  primary key (shop_id, conversation_id)
);
create index talk_in_channel on talk (channel, used_at desc);
create index talk_of_person on talk (person, used_at desc);

-- The same event of the platform may arrive twice and counts once.
create table heard (
  shop_id text not null references shop,
  delivery_id text not null,
  at timestamptz not null default now(),
  primary key (shop_id, delivery_id)
);
create index heard_by_time on heard (shop_id, at);

-- What was posted: epoch milliseconds, because the platform's own memory of nonces is a matter of seconds.
create table posting (
  shop_id text not null references shop,
  nonce text not null,
  part integer not null,
  channel text,
  round integer not null default 1,
  first_attempt_at bigint,
  message text,
  body text,
  fence integer not null,
  until bigint not null,
  primary key (shop_id, nonce, part)
);
create index posting_message on posting (channel, message);

-- Messages whose newest body does not stand on the platform yet; gone when it does.
create table delivery (
  shop_id text not null references shop,
  nonce text not null,
  channel text not null,
  seq bigint not null,
  changed bigint not null,
  tries integer not null default 0,
  due_at timestamptz not null default now(),
  primary key (shop_id, nonce)
);
create index delivery_in_order on delivery (shop_id, channel, seq);
