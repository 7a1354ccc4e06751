#include "app/window/live_audit.h"

#include <algorithm>

namespace stopwalk::window {
namespace {

// Whether the audit of one goes on from that of the other.
bool follows(const LiveAudit::Question& next, const LiveAudit::Question& last) {
  return next.kinds == last.kinds && next.profile == last.profile && next.failed == last.failed;
}

}  // namespace

LiveAudit::LiveAudit(QObject* parent)
    : QObject(parent),
      worker_(
          this,
          // Made anew after a failure: they may be half way from one layout to the next.
          [auditors = std::shared_ptr<Auditors>()](const Question& question, const auto& give) mutable {
            const auto at_work = auditors ? std::exchange(auditors, nullptr) : std::make_shared<Auditors>();
            try {
              give(answerTo(question, *at_work, [&] { return give.isWanted(); }));
            } catch (const audit::NoLongerWanted&) {
              return;
            }
            auditors = at_work;
          },
          [this](std::shared_ptr<const Answer> answer) { emit answered(std::move(answer)); },
          [this](const QString& why) { emit failed(why); }) {}

void LiveAudit::ask(Question question) {
  const bool afresh = last_ && !follows(question, *last_);
  last_ = question;
  afresh ? worker_.askAfresh(std::move(question)) : worker_.ask(std::move(question));
}

LiveAudit::Answer LiveAudit::answerTo(const Question& question, Auditors& auditors,
                                      const audit::Wanted& wanted) {
  const auto reportOf = [&](audit::Auditor& auditor, const layout::Layout& layout, floor::Hours hours) {
    return std::make_shared<const audit::Report>(
        auditor.audit(layout, *question.kinds, question.profile, hours, question.failed, wanted));
  };
  Answer answer;
  answer.layout = question.layout;
  answer.suppositions = question.suppositions;
  answer.rules_off =
      static_cast<int>(std::ranges::count(question.profile.settings, false, &audit::Setting::on));
  answer.report = reportOf(auditors.as_is, *question.layout, floor::Hours::Open);
  const auto findNarrowPlaces = [&](const layout::Layout& layout, floor::Hours hours) {
    if (!question.is_preview)
      answer.narrow_places = std::make_shared<const floor::NarrowPlaces>(floor::buildPlan(layout, hours));
  };
  if (question.suppositions.empty()) {
    findNarrowPlaces(*question.layout, floor::Hours::Open);
    return answer;
  }
  const layout::Layout supposed = planning::supposed(*question.layout, question.suppositions);
  answer.supposed = reportOf(auditors.supposed, supposed, question.suppositions.hours);
  findNarrowPlaces(supposed, question.suppositions.hours);
  return answer;
}

}  // namespace stopwalk::window
