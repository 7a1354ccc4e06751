#include "app/command_line/log.h"

#include <spdlog/sinks/ostream_sink.h>

namespace stopwalk::app {

std::shared_ptr<spdlog::logger> logTo(std::ostream& stream, spdlog::level::level_enum from) {
  auto log =
      std::make_shared<spdlog::logger>("stopwalk", std::make_shared<spdlog::sinks::ostream_sink_mt>(stream));
  log->set_pattern("stopwalk: %v");
  log->set_level(from);
  return log;
}

}  // namespace stopwalk::app
