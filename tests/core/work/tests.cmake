# What a person does, in a real garage file in a folder of its own.
asleft_core_tests(work LIBRARIES demo_garage Qt6::Sql)
