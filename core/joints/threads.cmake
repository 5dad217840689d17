# Builds the thread tables into the library: each line of resources/threads/*.csv that is not a comment becomes one entry of
# threadTable(). A line of another form stops the configuring, so that a slip in a table is never built in.

set(thread_folder ${CMAKE_CURRENT_LIST_DIR}/../../resources/threads)

# read_thread_table(NAME SIZE PITCH SYSTEM COARSE FINE): NAME.csv with sizes and pitches of these forms, series COARSE or FINE.
function(read_thread_table name size pitch system coarse fine)
    set(table ${thread_folder}/${name}.csv)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${table})
    file(STRINGS ${table} lines REGEX "^[^#]")
    set(entries "")
    foreach(line IN LISTS lines)
        if(NOT line MATCHES "^(${size}),(${pitch}),(${coarse}|${fine})$")
            message(FATAL_ERROR "${table}: \"${line}\" is no thread")
        endif()
        string(REGEX MATCHALL "[^,]+" columns "${line}")
        list(GET columns 0 thread_size)
        list(GET columns 1 thread_pitch)
        list(GET columns 2 thread_series)
        if(thread_series STREQUAL coarse)
            set(is_coarse true)
        else()
            set(is_coarse false)
        endif()
        string(APPEND entries "        {UnitSystem::${system}, \"${thread_size}\", \"${thread_pitch}\", ${is_coarse}},\n")
    endforeach()
    set(thread_entries "${thread_entries}${entries}" PARENT_SCOPE)
endfunction()

set(thread_entries "")
read_thread_table(metric "[0-9]+([.][0-9]+)?" "[0-9]+([.][0-9]+)?" Metric coarse fine)
read_thread_table(unified "no[.][0-9]+|([0-9]+ )?[0-9]+/[0-9]+|[0-9]+" "[0-9]+" Inch UNC UNF)

set(thread_source ${CMAKE_CURRENT_BINARY_DIR}/joints_threads/thread_table.cpp)
configure_file(${CMAKE_CURRENT_LIST_DIR}/thread_table.cpp.in ${thread_source} @ONLY)
target_sources(joints PRIVATE ${thread_source})
target_include_directories(joints PRIVATE ${CMAKE_CURRENT_LIST_DIR})
