/exit 0
