#pragma once

#include <cstddef>
#include <string>

#include "core/audit/report.h"

// How many there are of something, in words.
namespace stopwalk::audit {

// "1 machine", "2 machines".
std::string counted(std::size_t n, const std::string& one);
// "1 fails", "2 fail": so many stand like that.
std::string counted(std::size_t n, Verdict verdict);

}  // namespace stopwalk::audit
