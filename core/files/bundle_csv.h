#pragma once

#include <string>

#include "core/files/report_json.h"
#include "core/inspection/bundle.h"

namespace stopwalk::files {

// One table by RFC 4180 for everything: a row of names, then the layout, its audit and the records' head, the
// rounds and checks of the period, what is failed and what is open. `kind` says what a row is. A check's row
// always has machine, date, people and inspector: 29 CFR 1910.147(c)(6)(ii) asks for these of an inspection.
std::string bundleCsv(const inspection::Bundle& bundle, const FiledReport& report);

}  // namespace stopwalk::files
