#pragma once

// The few headers nearly every file of the app reads; more of Qt in here would slow every compile down.
#include <QLabel>
#include <QList>
#include <QObject>
#include <QString>
#include <QWidget>

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>
