#include "app/command_line/round_time.h"

#include "app/records/local_time.h"

namespace stopwalk::app {
namespace {

using inspection::Moment;

SaidTime read(const std::string& text) {
  const auto typed = records::momentsTyped(text);
  if (!typed)
    return {{}, "a day and a time as \"2026-03-02 09:15\" are expected, with a zone behind or without"};
  if (typed->size() == 1) return {typed->front(), ""};
  if (typed->empty())
    return {{}, "the clocks here were put forward over that time; say it with its zone, as +01:00"};
  return {{},
          "the clocks here showed that time twice; say which, as " + momentText(typed->front()) + " or " +
              momentText(typed->back())};
}

}  // namespace

SaidTime timeSaid(const std::string& text, const Moment& now) {
  SaidTime said = read(text);
  if (said.at && instantOf(*said.at) > instantOf(now))
    return {{}, "that is still to come: it is now " + momentText(now)};
  return said;
}

void addAtOption(CLI::App& command, std::string& at, const std::string& help) {
  command
      .add_option("--at", at,
                  help + ": \"2026-03-02 09:15\", with a zone behind (+01:00) or on the clock of this place")
      ->check(saysSomething("a day and a time"));
}

}  // namespace stopwalk::app
