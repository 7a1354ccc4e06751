#include "app/rounds/counts_for.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/rounds/reasons.h"
#include "app/rounds/words.h"
#include "core/inspection/check_rules.h"
#include "core/inspection/person.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;
using inspection::DeviceNow;
using inspection::Due;
using inspection::LeftOpen;
using inspection::Result;
using inspection::Tried;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::CountsFor)
};

constexpr qsizetype kMostNamed = 2;  // the others are seen in the boxes

bool isTest(const Check& pass, Due::What test, const DeviceNow& device) {
  switch (test) {
    case Due::What::Pressed:
      return inspection::passedPressed(pass);
    case Due::What::Full:
      return inspection::passedInFull(pass, device.latches);
    case Due::What::Seen:
      return device.is_stop ? inspection::testedFor(pass, Tried::Seen).value_or(true)
                            : inspection::passedSeen(pass);
    case Due::What::Retest:
      break;
  }
  return inspection::workedAsAsked(pass, device.is_stop);
}

std::vector<Due::What> testsOf(const DeviceNow& device) {
  if (device.is_stop) return {Due::What::Pressed, Due::What::Full};
  return {Due::What::Seen};
}

void drop(Check& check, Tried test) {
  std::erase_if(check.tested, [&](const auto& said) { return said.first == test; });
}

QString listed(const std::vector<Due::What>& tests) {
  QStringList words;
  for (const Due::What test : tests) words << wordOf(test);
  return words.join(Words::tr(", "));
}

QString listed(const std::vector<Tried>& tried, const DeviceNow& device) {
  QStringList words;
  for (const Tried test : tried) words << Words::tr("\"%1\"").arg(device.is_stop ? wordOf(test) : lookWord());
  if (words.size() > kMostNamed)
    words = words.mid(0, kMostNamed) << Words::tr("and %1 more").arg(words.size() - kMostNamed);
  return words.join(Words::tr(", "));
}

QString notTickedText(const Check& pass, std::span<const Due::What> tests, const DeviceNow& device) {
  return Words::tr("not ticked: %1").arg(listed(notTicked(pass, tests, device), device));
}

// Why the failure of the device stays open; none: it is closed, or there is none.
std::optional<LeftOpen> leftOpen(const Check& pass, const DeviceOn& device, const QString& by) {
  if (!device.state || !device.state->failed) return std::nullopt;
  if (!isTest(pass, Due::What::Retest, device.now))
    return device.now.is_stop ? LeftOpen::NotPressed : LeftOpen::NotSeen;
  const std::string name = personTyped(by).toStdString();
  const bool is_same = !name.empty() && inspection::maybeSamePerson(name, device.state->failed->found_by);
  return device.schedule.retest_by_another && is_same ? std::optional(LeftOpen::SamePerson) : std::nullopt;
}

// Of these tests those that the pass is none of, that are due.
std::vector<Due::What> leftOf(const std::vector<Due>& due, const Check& pass, const DeviceNow& device) {
  std::vector<Due::What> left;
  for (const Due& d : due)
    if (d.what != Due::What::Retest && !isTest(pass, d.what, device)) left.push_back(d.what);
  return left;
}

}  // namespace

std::vector<Due> DeviceOn::due() const {
  if (!state) return {};
  return inspection::dueOn(std::span(&now.id, 1), std::span(state, 1), schedule, day);
}

std::vector<Tried> notTicked(const Check& pass, std::span<const Due::What> tests, const DeviceNow& device) {
  const auto isAll = [&](const Check& check) {
    return std::ranges::all_of(tests, [&](Due::What test) { return isTest(check, test, device); });
  };
  if (isAll(pass)) return {};
  const auto wasSo = [&](Tried test) { return inspection::testedFor(pass, test).value_or(false); };
  std::vector<Tried> left;
  Check all;
  all.result = Result::Pass;
  for (const Tried test : inspection::mayBeTried(device.is_stop)) {
    const bool is_asked = (test == Tried::Seen) != device.is_stop;  // in one, or apart
    if (!is_asked && !wasSo(test)) continue;
    all.tested.emplace_back(test, true);
    if (!wasSo(test)) left.push_back(test);
  }
  for (std::size_t i = left.size(); i-- > 0;) {
    Check without = all;
    drop(without, left[i]);
    if (!isAll(without)) continue;
    all = without;
    left.erase(left.begin() + static_cast<std::ptrdiff_t>(i));
  }
  return left;
}

WillCount willCountFor(const Entered& entered, const DeviceOn& device, const QString& by) {
  if (entered.result != Result::Pass) return {};
  Entered tried;
  tried.result = entered.result;
  tried.tested = entered.tested;
  if (const QString why = whatIsMissing(tried, device.now.latches); !why.isEmpty()) return {why, true};
  Check pass;
  pass.result = Result::Pass;
  pass.tested = entered.tested;
  std::vector<Due::What> counted;
  for (const Due::What test : testsOf(device.now))
    if (isTest(pass, test, device.now)) counted.push_back(test);
  QStringList said;
  if (const auto why = leftOpen(pass, device, by))
    said << Words::tr("Recorded like this, it stays failed: %1.")
                .arg(reasonText({.left_open = why, .failed = device.state->failed}, {}));
  if (const auto left = leftOf(device.due(), pass, device.now); !left.empty())
    said << Words::tr("Recorded like this, the device stays due for: %1, %2.")
                .arg(listed(left), notTickedText(pass, left, device.now));
  const bool is_short = !said.isEmpty();
  said << (counted.empty() ? Words::tr("It counts as no test.")
                           : Words::tr("It counts as: %1.").arg(listed(counted)));
  return {said.join(' '), is_short};
}

QString stillDueText(const Check& check, const DeviceOn& device) {
  if (check.result != Result::Pass) return {};
  const auto left = leftOf(device.due(), check, device.now);
  if (left.empty()) return {};
  return Words::tr("%1, %2", "what is due; what was not ticked")
      .arg(listed(left), notTickedText(check, left, device.now));
}

QString whyNot(Due::What test, const Check& check, const DeviceNow& device) {
  if (check.result != Result::Pass || isTest(check, test, device)) return {};
  return notTickedText(check, std::span(&test, 1), device);
}

}  // namespace stopwalk::rounds
