-- A plan is a large text that says the same words over and over: it travels and lies packed (zlib, RFC 1950). What was written
-- before stays readable: its bytes are the JSON text itself.
alter table plan alter body type bytea using convert_to(body::text, 'UTF8');
alter table plan alter body set storage external;
