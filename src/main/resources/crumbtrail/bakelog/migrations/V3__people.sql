-- Several people in one log. Their name is that of the baker; who has no account is a baker of a
-- log that was kept by one person, or came from another log.
create table account (
  baker_id bigint primary key references baker (id) on delete cascade,
  name_key varchar(200) not null,
  role varchar(10) not null,
  secret varchar(300) not null,
  made timestamp(3) with time zone not null
);
create unique index account_name on account (name_key);

-- Who is logged in: of the token that the browser has, only its hash.
create table log_in (
  token_hash varchar(64) primary key,
  baker_id bigint not null references baker (id) on delete cascade,
  begun timestamp(3) with time zone not null,
  used timestamp(3) with time zone not null
);
create index log_in_baker on log_in (baker_id);
create index log_in_used on log_in (used);

alter table school_class add column teacher_id bigint references baker (id) on delete set null;
-- With it bakers join; none while the class is closed.
alter table school_class add column code varchar(20);
create unique index school_class_code on school_class (code);
create index school_class_teacher on school_class (teacher_id);

create table class_member (
  class_id bigint not null references school_class (id) on delete cascade,
  baker_id bigint not null references baker (id) on delete cascade,
  primary key (class_id, baker_id)
);
create index class_member_baker on class_member (baker_id);

-- How often something may be tried: the moment, in milliseconds, from which on nothing is owed.
create table allowance (
  name varchar(200) primary key,
  free_at bigint not null
);
