# The binder systems: what was done with one.

systems-saved = “{ $name }” saved as own system.
systems-replaced = “{ $name }” replaced.
systems-renamed = “{ $before }” renamed “{ $name }”.
systems-deleted = “{ $name }” deleted.
