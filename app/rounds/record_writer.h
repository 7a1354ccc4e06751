#pragma once

#include <QObject>
#include <QThreadPool>
#include <functional>

#include "app/records/append_record.h"

namespace stopwalk::rounds {

// Writes records on a thread of its own, one at a time: it waits for the disk, and for others who write.
// Its end waits for what is being written.
class RecordWriter : public QObject {
  Q_OBJECT

 public:
  using Make = std::function<inspection::Record()>;

  explicit RecordWriter(QObject* parent = nullptr);
  ~RecordWriter() override;

  // `make` is called on the thread: it may take its time. `read`: to where the log was read, see
  // records::appendRecord. Nothing while another is being written.
  void write(const std::string& records_file, const records::ReadTo& read, Make make);
  bool isWriting() const { return writing_; }

 signals:
  // How it went; the record has its number if it is on the disk.
  void written(const stopwalk::records::Appended& appended, const stopwalk::inspection::Record& record);

 private:
  QThreadPool worker_;
  bool writing_ = false;
};

}  // namespace stopwalk::rounds
