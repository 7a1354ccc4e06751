#pragma once

#include <QObject>
#include <memory>
#include <thread>

#include "app/window/newest.h"
#include "core/audit/audit.h"

namespace stopwalk::window {

// Audits the newest layout on a thread of its own. A layout that is asked for while an audit runs is next;
// those between are not audited.
class LiveAudit : public QObject {
  Q_OBJECT

 public:
  struct Question {
    std::shared_ptr<const layout::Layout> layout;
    std::shared_ptr<const layout::DeviceKinds> kinds;
    audit::Profile profile;
    floor::Hours hours = floor::Hours::Open;
  };

  explicit LiveAudit(QObject* parent = nullptr);
  ~LiveAudit() override;  // waits for the audit that runs

  void ask(Question question);
  // Whether the last report was of the layout asked for last.
  bool isCurrent() const { return asked_ == answered_; }

 signals:
  void answered(std::shared_ptr<const stopwalk::audit::Report> report,
                std::shared_ptr<const stopwalk::layout::Layout> layout);

 private:
  void work();

  Newest<std::pair<int, Question>> next_;
  int asked_ = 0;
  int answered_ = 0;
  std::thread worker_;
};

}  // namespace stopwalk::window
