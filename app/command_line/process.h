#pragma once

#include <functional>
#include <span>
#include <string>
#include <vector>

namespace stopwalk::app {

struct Command;

// In the environment of a program on its way to become the painter.
inline constexpr const char* kBecoming = "STOPWALK_BECOMES_PAINTER";

std::vector<std::string> argumentsOf(int argc, char** argv);
// The program in this process: on its standard streams, with its terminal, signals and memory.
int runProcess(std::vector<std::string> args, std::span<const Command> commands,
               std::function<int(const std::string& layout)> window = {});

}  // namespace stopwalk::app
