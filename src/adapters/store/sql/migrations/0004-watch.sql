-- Whose records and workers a shop is served by: its own id, or that of the house it belongs to.
alter table shop add column house text;
update shop set house = shop_id;
alter table shop alter column house set not null;
create index shop_of_house on shop (house);

-- What those who watch are told: when a step was first wanted and when it was done, and when the plan was last written.
alter table step add column wanted_at timestamptz not null default now();
alter table step add column done_at timestamptz;
update step set wanted_at = sent_at;
create index step_done_lately on step (shop_id, step, done_at);
alter table plan add column written_at timestamptz not null default now();

-- Rows that were handed over and keys whose time is over are taken away.
create index outbox_handed_over on outbox (sent_at) where sent_at is not null;
create index key_that_ends on key (shop_id, until) where until is not null;
