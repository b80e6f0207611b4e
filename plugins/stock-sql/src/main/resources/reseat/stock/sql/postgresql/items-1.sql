-- The lines of a stock, for shops that have no tables of their own.
-- serves: order numbers and ids, with | between them.
create table if not exists ${schema}.item (
    id varchar(200) primary key,
    kind varchar(10) not null check (kind in ('part', 'screw', 'consumable', 'tool')),
    name varchar(500) not null,
    serves varchar(4000) not null check (serves <> ''),
    on_hand numeric(30, 12) not null check (on_hand >= 0),
    unit varchar(40) not null,
    lot varchar(200),
    expires date,
    place varchar(200)
)
