#include "app/rounds/counts_for.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/rounds/reasons.h"
#include "app/rounds/words.h"
#include "core/inspection/person.h"
#include "core/inspection/tests_of_pass.h"

namespace stopwalk::rounds {
namespace {

using inspection::Check;
using inspection::DeviceNow;
using inspection::Due;
using inspection::IfRecorded;
using inspection::isTest;
using inspection::LeftOpen;
using inspection::Result;
using inspection::Tried;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::CountsFor)
};

constexpr qsizetype kMostNamed = 2;  // the others are seen in the boxes

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
  return Words::tr("not ticked: %1").arg(listed(inspection::notTicked(pass, tests, device), device));
}

// Behind "it stays failed: "; empty: it does not. What failed by records that are missed is not among those
// that `then` is of: it asks for a pass that works it.
QString whyFailed(const Check& check, const IfRecorded& then, const DeviceOn& device,
                  const layout::Layout& layout) {
  if (then.after.failed && then.short_of && then.short_of->left_open)
    return reasonText(*then.short_of, namesOf(layout, then.short_of->not_named));
  const bool is_missed = device.state && device.state->failed && !then.before.failed;
  if (!is_missed) return {};
  std::optional<LeftOpen> why;
  if (device.schedule.retest_by_another && !check.inspector.empty() &&
      inspection::maybeSamePerson(check.inspector, device.state->failed->found_by))
    why = LeftOpen::SamePerson;
  if (!isTest(check, Due::What::Retest, device.now))
    why = device.now.is_stop ? LeftOpen::NotPressed : LeftOpen::NotSeen;
  return why ? reasonText({.left_open = why, .failed = device.state->failed}, {}) : QString();
}

std::vector<Due> dueBy(const inspection::DeviceState& state, const DeviceOn& device) {
  return inspection::dueOn(std::span(&device.now.id, 1), std::span(&state, 1), device.schedule, device.day);
}

// Of what stays due that which was tested, though: the check is of too long ago.
std::vector<Due::What> testedBefore(const std::vector<Due>& due, const Check& pass, const DeviceOn& device) {
  std::vector<Due::What> old;
  for (const Due& d : due)
    if (d.what != Due::What::Retest && !d.despite && isTest(pass, d.what, device.now)) old.push_back(d.what);
  return old;
}

// What a correction makes due that was not.
std::vector<Due::What> becomesDue(const IfRecorded& then, const DeviceOn& device) {
  std::vector<Due::What> more;
  const std::vector<Due> was = dueBy(then.before, device);
  for (const Due& d : dueBy(then.after, device))
    if (std::ranges::find(was, d.what, &Due::what) == was.end()) more.push_back(d.what);
  return more;
}

QString becomesDueText(const std::vector<Due::What>& more) {
  return Words::tr("Recorded like this, the device becomes due for: %1.").arg(listed(more));
}

QString countedAs(const IfRecorded& then, const DeviceOn& device) {
  std::vector<Due::What> counted;
  for (const Due::What test : inspection::testsOf(device.now, device.schedule))
    if (std::ranges::find(then.counts, test) != then.counts.end()) counted.push_back(test);
  return counted.empty() ? Words::tr("It counts as no test.")
                         : Words::tr("It counts as: %1.").arg(listed(counted));
}

// What a pass does not do.
QStringList shortcomings(const Check& check, const IfRecorded& then, const DeviceOn& device,
                         const layout::Layout& layout) {
  QStringList said;
  const QString failed = whyFailed(check, then, device, layout);
  if (!failed.isEmpty()) said << Words::tr("Recorded like this, it stays failed: %1.").arg(failed);
  const auto* doubt = then.short_of && then.short_of->not_counted ? &*then.short_of->not_counted : nullptr;
  if (doubt && then.short_of->left_open != LeftOpen::InDoubt)
    said << Words::tr("Recorded like this, it does not count: %1.")
                .arg(reasonText(*doubt, namesOf(layout, doubt->machines)));
  const auto more = check.corrects ? becomesDue(then, device) : std::vector<Due::What>();
  if (!more.empty()) said << becomesDueText(more);
  std::vector<Due> due = dueBy(then.after, device);
  std::erase_if(due, [&](const Due& d) { return std::ranges::find(more, d.what) != more.end(); });
  if (const auto left = inspection::notTestedBy(check, due, device.now); !left.empty())
    said << Words::tr("Recorded like this, the device stays due for: %1, %2.")
                .arg(listed(left), notTickedText(check, left, device.now));
  if (const auto old = testedBefore(due, check, device); !old.empty() && !doubt)
    said << Words::tr("Recorded like this, the device stays due for: %1, as the check is of %2.")
                .arg(listed(old), dayText(then.on));
  return said;
}

}  // namespace

std::vector<Due> DeviceOn::due() const {
  return state ? dueBy(*state, *this) : std::vector<Due>();
}

WillCount willCountFor(const Entered& entered, const Check& check, const IfRecorded& then,
                       const DeviceOn& device, const layout::Layout& layout) {
  if (!entered.result) return {};
  if (entered.result != Result::Pass) {
    const auto more = check.corrects ? becomesDue(then, device) : std::vector<Due::What>();
    return more.empty() ? WillCount() : WillCount{becomesDueText(more), true};
  }
  Entered tried;
  tried.result = entered.result;
  tried.tested = entered.tested;
  if (const QString why = whatIsMissing(tried, device.now.latches); !why.isEmpty()) return {why, true};
  QStringList said = shortcomings(check, then, device, layout);
  const bool is_short = !said.isEmpty();
  said << countedAs(then, device);
  return {said.join(' '), is_short};
}

QString stillDueText(const Check& check, const DeviceOn& device) {
  if (check.result != Result::Pass) return {};
  const auto left = inspection::notTestedBy(check, device.due(), device.now);
  if (left.empty()) return {};
  return Words::tr("%1, %2", "what is due; what was not ticked")
      .arg(listed(left), notTickedText(check, left, device.now));
}

QString whyNot(Due::What test, const Check& check, const DeviceNow& device) {
  if (check.result != Result::Pass || isTest(check, test, device)) return {};
  return notTickedText(check, std::span(&test, 1), device);
}

}  // namespace stopwalk::rounds
