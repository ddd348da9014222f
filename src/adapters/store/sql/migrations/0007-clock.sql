-- Records that were made on a simulated clock live on it for good: which instant of the machine was which of theirs, in epoch
-- milliseconds, and how many times faster it runs. Records on real time have no such row.
create table simulated_clock (
  one boolean primary key default true check (one),
  real bigint not null,
  simulated bigint not null,
  speed double precision not null check (speed > 0)
);

-- When something was said is the time of the shop's clock, which the service hands in; the server's own clock knows nothing of it.
alter table message alter column at drop default;
