# Die Bindemittelsysteme: was mit einem getan wurde.

systems-saved = „{ $name }“ als eigenes System gespeichert.
systems-replaced = „{ $name }“ ersetzt.
systems-renamed = „{ $before }“ in „{ $name }“ umbenannt.
systems-deleted = „{ $name }“ gelöscht.
