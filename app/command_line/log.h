#pragma once

#include <spdlog/logger.h>

#include <memory>
#include <ostream>

namespace stopwalk::app {

// The log of `-v`: a line each, without times, so that two runs can be compared.
std::shared_ptr<spdlog::logger> logTo(std::ostream& stream, spdlog::level::level_enum from);

}  // namespace stopwalk::app
