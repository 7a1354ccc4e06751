#include "app/plan/rule_words.h"

#include <algorithm>
#include <iterator>
#include <string>

#include "app/plan/words.h"

namespace stopwalk::plan {
namespace {

struct RuleWords {
  std::string_view rule;
  const char* words;
};

// As class Words has them translated.
constexpr RuleWords kWords[] = {
    {"no-stop", QT_TRANSLATE_NOOP("plan", "nothing stops it")},
    {"stop-out-of-reach", QT_TRANSLATE_NOOP("plan", "no stop at hand")},
    {"stop-too-far", QT_TRANSLATE_NOOP("plan", "stop too far")},
    {"phone-too-far", QT_TRANSLATE_NOOP("plan", "phone too far")},
    {"unreachable (stop)", QT_TRANSLATE_NOOP("plan", "no way to a stop")},
    {"unreachable (phone)", QT_TRANSLATE_NOOP("plan", "no way to a phone")},
    {"failed-check", QT_TRANSLATE_NOOP("plan", "failed its check")},
    {"blocked-device", QT_TRANSLATE_NOOP("plan", "nobody can walk to it")},
    {"narrow-passage", QT_TRANSLATE_NOOP("plan", "the way is narrow")},
    {"exit-width", QT_TRANSLATE_NOOP("plan", "no way out that is wide enough")},
    {"actuator-height", QT_TRANSLATE_NOOP("plan", "too high or too low")},
    {"actuator-height-access", QT_TRANSLATE_NOOP("plan", "above the accessible reach")},
    {"no-emergency-stop", QT_TRANSLATE_NOOP("plan", "no emergency stop")},
    {"start-guard-missing", QT_TRANSLATE_NOOP("plan", "the start has no guard")},
    {"look-alike", QT_TRANSLATE_NOOP("plan", "what looks like its stop is nearer")},
    {"helper-too-slow", QT_TRANSLATE_NOOP("plan", "help comes too late")},
    {"slow-run-down", QT_TRANSLATE_NOOP("plan", "runs on too long")},
    {"cut-off-lengthens", QT_TRANSLATE_NOOP("plan", "runs on longer by the room cut-off")},
    {"no-room-cut-off", QT_TRANSLATE_NOOP("plan", "no room cut-off")},
    {"cut-off-too-far", QT_TRANSLATE_NOOP("plan", "room cut-off too far")},
    {"cut-off-at-exit", QT_TRANSLATE_NOOP("plan", "no room cut-off near an exit")},
    {"hidden-stop", QT_TRANSLATE_NOOP("plan", "stop out of sight")},
    {"standing-conflict", QT_TRANSLATE_NOOP("plan", "two stand in one place, or one in a doorway")},
    {"phone-after-hours", QT_TRANSLATE_NOOP("plan", "no phone after hours")},
    {"tape-disagrees", QT_TRANSLATE_NOOP("plan", "tape and plan differ")},
    {"drawing-fault", QT_TRANSLATE_NOOP("plan", "cannot be built as drawn")},
    {"incomplete-record", QT_TRANSLATE_NOOP("plan", "not known in full")},
};

}  // namespace

QString ruleWords(std::string_view rule, std::string_view which) {
  const std::string one_of_several = std::string(rule) + " " + std::string(which);
  const auto* found = std::ranges::find(kWords, one_of_several, &RuleWords::rule);
  if (found == std::end(kWords)) found = std::ranges::find(kWords, rule, &RuleWords::rule);
  if (found == std::end(kWords)) return QString::fromUtf8(rule.data(), static_cast<qsizetype>(rule.size()));
  return Words::tr(found->words);
}

}  // namespace stopwalk::plan
