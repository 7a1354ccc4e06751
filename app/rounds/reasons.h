#pragma once

#include <QString>
#include <QStringList>

#include "core/files/inspection_log.h"
#include "core/inspection/closing.h"
#include "core/layout/layout.h"

// Why a pass does not do what it seems to, as clauses; the command line has its own words for the same
// (core/inspection).
namespace stopwalk::rounds {

QStringList namesOf(const layout::Layout& layout, const std::vector<std::string>& machines);

// Why it counts for nothing; `machines`: names of those that it did not name.
QString reasonText(const inspection::NotCounted& pass, const QStringList& machines);
// Why it leaves a failure open.
QString reasonText(const inspection::ShortOfPass& pass, const QStringList& machines);

// What is wrong with a line of the records.
QString reasonText(files::Wrong what);

}  // namespace stopwalk::rounds
