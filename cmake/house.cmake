# What every target of the house is built with, and how a room is made.

add_library(house_flags INTERFACE)
target_compile_options(house_flags INTERFACE -Wall -Wextra -Wconversion)
# Once it optimises, gcc 12 sees overlapping or endless copies in "text" + string where there are none (its bug 105651), and takes the inside
# of an empty std::optional for read (its bug 80635). At -O1 it sees what is there, so the latter two are off in release builds alone.
target_compile_options(house_flags INTERFACE
    $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>
    $<$<AND:$<CXX_COMPILER_ID:GNU>,$<CONFIG:Release>>:-Wno-stringop-overflow;-Wno-maybe-uninitialized>)
target_compile_definitions(house_flags INTERFACE QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_KEYWORDS QT_NO_FOREACH)
if(ASLEFT_SANITIZE)
    target_compile_options(house_flags INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
    target_link_options(house_flags INTERFACE -fsanitize=address,undefined)
endif()

# No header of ours needs another one for moc to understand it.
get_target_property(moc Qt6::moc IMPORTED_LOCATION)
if(NOT moc)
    get_target_property(moc Qt6::moc IMPORTED_LOCATION_NONE)
endif()
configure_file(${CMAKE_CURRENT_LIST_DIR}/moc_alone.sh.in ${PROJECT_BINARY_DIR}/moc_alone.sh @ONLY USE_SOURCE_PERMISSIONS)
set(CMAKE_AUTOMOC_COMPILER_PREDEFINES OFF)

# asleft_moc(TARGET): its headers are given to moc.
function(asleft_moc target)
    set_target_properties(${target} PROPERTIES AUTOMOC ON AUTOMOC_EXECUTABLE ${PROJECT_BINARY_DIR}/moc_alone.sh)
endfunction()

# How many sources a unity build compiles together: enough that headers are read seldom, few enough that one edit is compiled again quickly.
set(CMAKE_UNITY_BUILD_BATCH_SIZE 8)

# asleft_room(NAME [SEES rooms and libraries whose headers ours include] [HIDES those only our sources include])
# Its sources are the *.cpp of the folder NAME, its one include directory is NAME/include; another room's headers are found only through SEES
# or HIDES, so a wrong-way include does not compile.
function(asleft_room name)
    cmake_parse_arguments(ROOM "" "TARGET" "SEES;HIDES" ${ARGN})
    set(target ${name})
    if(ROOM_TARGET)
        set(target ${ROOM_TARGET})
    endif()
    set(folder ${CMAKE_CURRENT_SOURCE_DIR}/${name})
    file(GLOB sources CONFIGURE_DEPENDS ${folder}/*.cpp)
    file(GLOB headers CONFIGURE_DEPENDS ${folder}/*.h ${folder}/include/${name}/*.h)
    add_library(${target} STATIC ${sources} ${headers})
    target_include_directories(${target} PUBLIC ${folder}/include)
    target_link_libraries(${target} PUBLIC ${ROOM_SEES} PRIVATE house_flags ${ROOM_HIDES})
    set_target_properties(${target} PROPERTIES UNITY_BUILD ON)
endfunction()
