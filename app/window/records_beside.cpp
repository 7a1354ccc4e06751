#include "app/window/records_beside.h"

#include <QDateTime>
#include <QFile>
#include <QFileInfo>

namespace stopwalk::window {
namespace {

constexpr int kLookEvery_ms = 2000;

}  // namespace

RecordsBeside::RecordsBeside(QObject* parent) : QObject(parent) {
  look_.setInterval(kLookEvery_ms);
  connect(&look_, &QTimer::timeout, this, &RecordsBeside::lookNow);
}

RecordsBeside::Stamp RecordsBeside::stampNow() const {
  if (layout_path_.isEmpty()) return {};
  const QFileInfo file(
      QFile::decodeName(records::recordsFileOf(QFile::encodeName(layout_path_).toStdString()).c_str()));
  return file.exists() ? Stamp{file.size(), file.lastModified().toMSecsSinceEpoch()} : Stamp{};
}

void RecordsBeside::follow(const QString& layout_path) {
  if (layout_path == layout_path_) return;
  layout_path_ = layout_path;
  stamp_ = {};
  read_ = std::make_shared<records::ReadRecords>();
  failed_.reset();
  if (layout_path_.isEmpty())
    look_.stop();
  else
    look_.start();
  if (stampNow() == Stamp())
    emit changed();
  else
    lookNow();
}

void RecordsBeside::lookNow() {
  const Stamp now = stampNow();
  if (now == stamp_) return;
  stamp_ = now;
  failed_.reset();
  read_ = std::make_shared<const records::ReadRecords>(
      records::readRecords(QFile::encodeName(layout_path_).toStdString()));
  emit changed();
}

const std::vector<inspection::FailedDevice>& RecordsBeside::failed(const inspection::Schedule& schedule) {
  if (!failed_ || failed_->first != schedule)
    failed_.emplace(schedule, inspection::failedDevices(records(), schedule));
  return failed_->second;
}

QString RecordsBeside::trouble() const {
  const QString file = QFileInfo(QFile::decodeName(read_->file.c_str())).fileName();
  if (!read_->unreadable.empty())
    return tr("The inspection records in %1 cannot be read, and are not taken into account: %2.")
        .arg(file, QString::fromStdString(read_->unreadable));
  if (read_->log.bad.empty()) return {};
  const files::BadLine& first = read_->log.bad.front();
  return tr("Line %1 of the inspection records in %2 is not as it was written: %3.")
      .arg(first.line)
      .arg(file, QString::fromStdString(first.why));
}

}  // namespace stopwalk::window
