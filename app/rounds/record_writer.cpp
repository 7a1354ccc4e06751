#include "app/rounds/record_writer.h"

#include <exception>

namespace stopwalk::rounds {

RecordWriter::RecordWriter(QObject* parent) : QObject(parent) {
  worker_.setMaxThreadCount(1);
}

RecordWriter::~RecordWriter() {
  worker_.waitForDone();
}

void RecordWriter::write(const std::string& records_file, const records::ReadTo& read, Make make) {
  if (writing_) return;
  writing_ = true;
  worker_.start([this, records_file, read, make = std::move(make)] {
    inspection::Record record;
    records::Appended appended;
    try {
      record = make();
      appended = records::appendRecord(records_file, record, records::kPatience, read);
    } catch (const std::exception& trouble) {  // such as of memory: it would end the program
      appended = {};
      appended.written = records::Written::Unsure;
      appended.why = trouble.what();
    }
    if (appended.written == records::Written::Yes)
      std::visit([&](auto& r) { r.number = appended.number; }, record);
    QMetaObject::invokeMethod(
        this,
        [this, appended, record = std::move(record)] {
          writing_ = false;
          emit written(appended, record);
        },
        Qt::QueuedConnection);
  });
}

}  // namespace stopwalk::rounds
