"""What alembic runs for a step: the connection is handed in, already within a transaction."""

from alembic import context

context.configure(connection=context.config.attributes["connection"])
with context.begin_transaction():
    context.run_migrations()
