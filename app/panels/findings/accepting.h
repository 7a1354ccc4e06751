#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "app/panels/actions/verb.h"
#include "app/panels/details/desk.h"
#include "app/panels/moment_ago.h"
#include "core/audit/report.h"

namespace stopwalk::panels {

// Lets the finding that is looked at stand for a time, or no longer.
class Accepting : public QWidget {
  Q_OBJECT

 public:
  explicit Accepting(const Desk& desk, QWidget* parent = nullptr);

  // All that is found. None: nullptr.
  void setReport(std::shared_ptr<const audit::Report> report);
  void setAge(Age age) { age_ = age; }
  // None: nullptr.
  void look(const audit::Finding* finding);
  // At what accepted a finding that is there no more, instead.
  void lookAtIdle(const layout::AcceptedFinding* idle);
  // What is found only because something is supposed is not accepted.
  void setSupposed(bool supposed);

  Verb& acceptVerb() const { return *accept_; }
  Verb& takeBackVerb() const { return *take_back_; }

 private:
  void allow();
  void accept();
  void takeBack();

  Desk desk_;
  audit::SharedList<audit::Finding> all() const;

  std::shared_ptr<const audit::Report> report_;
  std::optional<audit::Finding> finding_;
  std::optional<layout::AcceptedFinding> idle_;
  Age age_ = Age::Current;
  bool supposed_ = false;
  Verb *accept_, *take_back_;
};

}  // namespace stopwalk::panels
