"""Run by Alembic on the connection that `idkey.store.upgrading` hands over."""

from alembic import context

from idkey.store.schema import metadata

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=metadata,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
