# Builds the schema steps into the library: each file of resources/schema becomes one entry of builtInSteps(), in order of its number.

file(GLOB schema_files CONFIGURE_DEPENDS ${CMAKE_CURRENT_LIST_DIR}/../../resources/schema/[0-9][0-9][0-9]_*.sql)
list(SORT schema_files)

set(schema_entries "")
foreach(schema_file IN LISTS schema_files)
    get_filename_component(schema_name ${schema_file} NAME_WE)
    file(READ ${schema_file} schema_text)
    string(APPEND schema_entries "    {\"${schema_name}\", R\"schema(${schema_text})schema\"},\n")
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${schema_file})
endforeach()

set(schema_source ${CMAKE_CURRENT_BINARY_DIR}/store_schema/built_in_steps.cpp)
configure_file(${CMAKE_CURRENT_LIST_DIR}/built_in_steps.cpp.in ${schema_source} @ONLY)
target_sources(store PRIVATE ${schema_source})
target_include_directories(store PRIVATE ${CMAKE_CURRENT_LIST_DIR})
