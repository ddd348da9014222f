-- An order's price in another make ("without the stones?") is worked out by a step of its own.

alter table step drop constraint step_step_check;
alter table step add constraint step_step_check check (step in ('quote', 'price', 'plan', 'ticket', 'post'));
