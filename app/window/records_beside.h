#pragma once

#include <QObject>
#include <QTimer>
#include <memory>
#include <optional>

#include "app/records/records_file.h"
#include "core/inspection/schedule.h"

namespace stopwalk::window {

// The inspection records beside the layout in the window, read again when they have grown: by us, or by
// another program. Looks now and then, as network folders tell nothing.
class RecordsBeside : public QObject {
  Q_OBJECT

 public:
  explicit RecordsBeside(QObject* parent = nullptr);

  // Empty for a layout without a file, which has no records.
  void follow(const QString& layout_path);
  void lookNow();

  const std::shared_ptr<const records::ReadRecords>& read() const { return read_; }
  const inspection::Records& records() const { return read_->log.records; }
  // Remembered: it is asked for with every audit.
  const std::vector<inspection::FailedDevice>& failed(const inspection::Schedule& schedule);
  // What of them cannot be read or does not fit, in a sentence; empty: all is well.
  QString trouble() const;

 signals:
  void changed();

 private:
  struct Stamp {
    qint64 size = -1;
    qint64 modified_ms = -1;
    bool operator==(const Stamp&) const = default;
  };
  Stamp stampNow() const;

  QString layout_path_;
  Stamp stamp_;
  std::shared_ptr<const records::ReadRecords> read_ = std::make_shared<records::ReadRecords>();
  std::optional<std::pair<inspection::Schedule, std::vector<inspection::FailedDevice>>> failed_;
  QTimer look_;
};

}  // namespace stopwalk::window
