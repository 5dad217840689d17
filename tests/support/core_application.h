#pragma once

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace asleft {

/// Qt finds its database plugins only while an application object is alive.
inline void haveApplication()
{
    if (QCoreApplication::instance() != nullptr)
        return;
    static int count = 1;
    static char name[] = "test";
    static char *arguments[] = {name, nullptr};
    static const QCoreApplication application(count, arguments);
}

/// A warning Qt logs is a failure: nobody reads it otherwise.
inline void failOnWarning(QtMsgType type, const QMessageLogContext &, const QString &message)
{
    if (type != QtDebugMsg && type != QtInfoMsg)
        ADD_FAILURE() << "logged: " << message.toStdString();
}

} // namespace asleft
