#pragma once

#include <QString>
#include <QTest>

namespace asleft::testing {

/// What runs one test class: the arguments are those behind its name.
using RunTest = int (*)(const QStringList &arguments);

/// Makes a test known to main() under the name of its file, without ".cpp".
bool registerTest(const char *file, RunTest run);

/// The name under which this process was started, for starting the same test once more in another.
QString nameOfTest();

template <class TestClass>
int runTest(const QStringList &arguments)
{
    TestClass test;
    return QTest::qExec(&test, arguments);
}

} // namespace asleft::testing

// The only name at the scope of the file, so that a test says in its last line what runs it.
#define APP_TEST_BY(run) [[maybe_unused]] static const bool isRegistered = asleft::testing::registerTest(__FILE__, run);
#define APP_TEST(TestClass) APP_TEST_BY(asleft::testing::runTest<TestClass>)
