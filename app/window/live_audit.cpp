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

void LiveAudit::work() {
  while (auto next = next_.take()) {
    const auto& [number, question] = *next;
    auto report = std::make_shared<const audit::Report>(
        audit::audit(*question.layout, *question.kinds, question.profile, question.hours));
    QMetaObject::invokeMethod(
        this,
        [this, report, asked = number, layout = question.layout] {
          answered_ = asked;
          emit answered(report, layout);
        },
        Qt::QueuedConnection);
  }
}

}  // namespace stopwalk::window
