#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <utility>

#include "app/window/newest_answered.h"
#include "core/audit/audit.h"
#include "core/floor/narrow_place.h"
#include "core/planning/suppositions.h"

namespace stopwalk::window {

// Audits the newest layout on a thread of its own. A layout that is asked for while an audit runs is next;
// those between are not audited. The one under way is made to its end, for the next follows it faster than it
// is made anew; where rules, kinds or failures are others, it is left.
class LiveAudit : public QObject {
  Q_OBJECT

 public:
  struct Question {
    std::shared_ptr<const layout::Layout> layout;
    std::shared_ptr<const layout::DeviceKinds> kinds;
    audit::Profile profile;
    planning::Suppositions suppositions = {};
    std::vector<inspection::FailedDevice> failed = {};  // by the records beside the layout
    bool is_preview = false;  // what is dragged is to follow at once: no narrow places
  };
  struct Answer {
    std::shared_ptr<const layout::Layout> layout;              // as it is
    std::shared_ptr<const audit::Report> report;               // of it, in opening hours
    std::shared_ptr<const audit::Report> supposed;             // as it would be; none: nothing is supposed
    planning::Suppositions suppositions;                       // that is what is supposed
    int rules_off = 0;                                         // so many rules were not asked
    std::shared_ptr<const floor::NarrowPlaces> narrow_places;  // of what is to be shown; none: a preview

    // What is to be shown.
    const std::shared_ptr<const audit::Report>& shown() const { return supposed ? supposed : report; }
  };

  explicit LiveAudit(QObject* parent = nullptr);

  void ask(Question question);
  // Nothing is wanted any more: answers on their way are dropped.
  void leave() { worker_.leave(); }
  // Whether the last answer was to the last question.
  bool isCurrent() const { return worker_.isCurrent(); }

 signals:
  void answered(std::shared_ptr<const stopwalk::window::LiveAudit::Answer> answer);
  // The last question has no answer, such as for want of memory.
  void failed(const QString& why);

 private:
  // Each of one change after another.
  struct Auditors {
    audit::Auditor as_is, supposed;
  };
  static Answer answerTo(const Question& question, Auditors& auditors, const audit::Wanted& wanted);

  std::optional<Question> last_;
  NewestAnswered<Question, Answer> worker_;
};

}  // namespace stopwalk::window
