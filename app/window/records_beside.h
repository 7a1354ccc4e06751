#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

#include "app/records/records_file.h"
#include "app/window/newest_answered.h"
#include "core/inspection/schedule.h"
#include "core/layout/device_kind.h"
#include "core/layout/layout.h"

namespace stopwalk::window {

// The inspection records beside the layout in the window, read again when they have grown: by us, or by
// another program. Looks now and then, as network folders tell nothing; reads on a thread of its own, as
// those of ten years take a while: until then there is what was read before. Records that were read here and
// are there no longer are missed until they are back: what failed by them still counts as failed.
class RecordsBeside : public QObject {
  Q_OBJECT

 public:
  explicit RecordsBeside(QObject* parent = nullptr);

  // Empty for a layout without a file, which has no records.
  void follow(const QString& layout_path);
  void look();
  // And waits for what was there then, or later, to be read: the window is painted meanwhile, and nothing
  // else happens in it. What another program writes while it is read is not waited for.
  void lookNow();
  // What is there now is not known yet.
  bool isReading() const { return !reader_.isCurrent(); }
  // What is there now, against which the records are held. Neither may be null.
  void setLayout(std::shared_ptr<const layout::Layout> layout,
                 std::shared_ptr<const layout::DeviceKinds> kinds);

  const std::shared_ptr<const records::ReadRecords>& read() const { return read_; }
  const inspection::Records& records() const { return read_->log.records; }
  // Remembered: it is asked for with every audit.
  const std::vector<inspection::FailedDevice>& failed(const inspection::Schedule& schedule);
  // Whether records that were read are there no longer, or not as they were.
  bool areMissed() const { return are_missed_; }
  // What is there now is gone on from; nothing is missed any more. What failed by what was missed stays
  // failed, as long as this layout is open here, until it passes a check made from now on.
  void takeAsTheyAre();
  // Why they cannot be read, in a sentence; empty: they can.
  QString unreadable() const;
  // What of them cannot be read or does not fit, in a sentence; empty: all is well.
  QString trouble() const;

 signals:
  void begun();  // to read
  void changed();

 private:
  struct Stamp {
    qint64 size = -1;
    qint64 modified_ms = -1;
    bool operator==(const Stamp&) const = default;
  };
  Stamp stampNow() const;
  void take(std::shared_ptr<const records::ReadRecords> read);
  void addKept(std::vector<inspection::FailedDevice>& failed, const inspection::Schedule& schedule) const;
  QString missed() const;
  QString fileName() const;

  QString layout_path_;
  std::shared_ptr<const layout::Layout> layout_;
  std::shared_ptr<const layout::DeviceKinds> kinds_;
  std::vector<inspection::DeviceNow> devices_;
  Stamp stamp_;
  std::shared_ptr<const records::ReadRecords> read_ = std::make_shared<records::ReadRecords>();
  std::shared_ptr<const records::ReadRecords> known_ = read_;  // the most that was read of the log
  bool are_missed_ = false;                                    // `read_` is not all of it
  std::vector<inspection::FailedDevice> kept_;                 // failed by what was missed
  std::size_t kept_behind_ = 0;                                // how many lines there were then
  inspection::Moment kept_at_;
  struct Failed {
    inspection::Schedule by;
    inspection::Date on{};
    std::vector<inspection::FailedDevice> devices;
  };
  std::optional<Failed> failed_;
  QTimer look_;
  NewestAnswered<std::string, records::ReadRecords> reader_;  // of the layout's path
};

}  // namespace stopwalk::window
