#include "app/window/live_audit.h"

namespace stopwalk::window {

LiveAudit::LiveAudit(QObject* parent) : QObject(parent), worker_([this] { work(); }) {}

LiveAudit::~LiveAudit() {
  next_.close();
  worker_.join();
}

void LiveAudit::ask(Question question) {
  next_.put({++asked_, std::move(question)});
}

LiveAudit::Answer LiveAudit::answerTo(const Question& question, Auditors& auditors) {
  const auto reportOf = [&](audit::Auditor& auditor, const layout::Layout& layout, floor::Hours hours) {
    return std::make_shared<const audit::Report>(
        auditor.audit(layout, *question.kinds, question.profile, hours, question.failed));
  };
  Answer answer;
  answer.layout = question.layout;
  answer.report = reportOf(auditors.as_is, *question.layout, floor::Hours::Open);
  if (question.suppositions.empty()) return answer;
  const layout::Layout supposed = planning::supposed(*question.layout, question.suppositions);
  answer.supposed = reportOf(auditors.supposed, supposed, question.suppositions.hours);
  return answer;
}

void LiveAudit::work() {
  Auditors auditors;
  while (auto next = next_.take()) {
    const auto answer = std::make_shared<const Answer>(answerTo(next->second, auditors));
    QMetaObject::invokeMethod(
        this,
        [this, answer, asked = next->first] {
          answered_ = asked;
          emit answered(answer);
        },
        Qt::QueuedConnection);
  }
}

}  // namespace stopwalk::window
