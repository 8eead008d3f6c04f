C1 a b ${value}
