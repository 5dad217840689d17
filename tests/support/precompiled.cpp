// Empty on purpose: what every test of core reads first is compiled beside it, once for all rooms.
