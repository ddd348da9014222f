-- A conversation's document is kept as it was written: jsonb sorts the names of an object's parts, so a garment or a mark that was
-- said first came back as the last, and the order was another one than was sent to be worked out.
alter table conversation alter column state type json using state::json;
