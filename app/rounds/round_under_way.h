#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/inspection/record.h"

namespace stopwalk::rounds {

// The round that is being walked: its devices in their order, what came of each, and at which one is. What
// shows a round listens here.
class RoundUnderWay : public QObject {
  Q_OBJECT

 public:
  using QObject::QObject;

  // Nothing else tells of rounds. A round that is not there (any more) is left.
  void setRecords(std::shared_ptr<const inspection::Records> records);
  // Goes to the first device without a check.
  void walk(std::size_t round);
  void leave();

  // None: no round is walked.
  const std::optional<inspection::Round>& round() const { return round_; }
  const std::vector<std::string>& order() const;
  const std::string& device() const { return device_; }  // empty: none
  std::size_t place() const;                             // of the device in the order
  // The check that says last what came of the device in this round; none: there is none yet.
  const inspection::Check* checkOf(const std::string& device) const;
  std::optional<inspection::Result> resultOf(const std::string& device) const;
  std::size_t checked() const;  // devices
  bool isFinished() const { return round_ && checked() == order().size(); }

  void goTo(const std::string& device);  // of another round's: nothing
  void goBy(int steps);                  // along the order, to its ends
  // The next without a check, from here round to here; there is none: stays.
  void goOn();

 signals:
  void changed();

 private:
  void fill();

  std::shared_ptr<const inspection::Records> records_ = std::make_shared<inspection::Records>();
  std::optional<inspection::Round> round_;
  std::vector<const inspection::Check*> checks_;  // among `records_`, in the order
  std::string device_;
};

}  // namespace stopwalk::rounds
