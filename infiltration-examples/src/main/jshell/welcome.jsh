System.out.println("Surface infiltration tests: every type of the library is imported; end with /exit.");
System.out.println("Try: var season = demo(), rates(season, \"V8\"), compare(...), history(season, \"HQ-A\"), chart(...), save(...).");
System.out.println("The demo season is invented. The licensed standard, local codes and the engineer of record govern.");
