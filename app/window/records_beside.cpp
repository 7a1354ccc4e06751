#include "app/window/records_beside.h"

#include <QDateTime>
#include <QEventLoop>
#include <QFile>
#include <QFileInfo>
#include <QStringList>
#include <algorithm>

#include "app/rounds/reasons.h"
#include "core/planning/inspected_devices.h"

namespace stopwalk::window {
namespace {

constexpr int kLookEvery_ms = 2000;

// Whether all that was known of the log still stands in it.
bool goesOn(const records::ReadRecords& now, const records::ReadRecords& known) {
  const std::vector<std::string>&is = now.log.hashes, &was = known.log.hashes;
  return is.size() >= was.size() && std::equal(was.begin(), was.end(), is.begin());
}

std::shared_ptr<const ComeTo> comeToOf(const std::shared_ptr<const records::ReadRecords>& read,
                                       HeldAgainst held) {
  return std::make_shared<const ComeTo>(std::shared_ptr<const inspection::Records>(read, &read->log.records),
                                        std::move(held));
}

}  // namespace

RecordsBeside::RecordsBeside(QObject* parent)
    : QObject(parent),
      reader_(
          this,
          [this](const std::string& layout, const auto& give) {
            Answer answer{std::make_shared<const records::ReadRecords>(records::readRecords(layout)),
                          nullptr};
            if (!give.isWanted()) return;
            HeldAgainst held;
            {
              const std::lock_guard lock(holding_);
              held = hold_;
            }
            held.now = records::momentNow();  // none of what was read is of later
            answer.come_to = comeToOf(answer.read, std::move(held));
            give(std::move(answer));
          },
          [this](std::shared_ptr<const Answer> answer) { take(*answer); },
          [this](const QString& why) {  // such as for want of memory: tried again at the next look
            reader_.leave();
            stamp_ = {};
            records::ReadRecords unread;
            unread.file = records::recordsFileOf(QFile::encodeName(layout_path_).toStdString());
            unread.there = true;
            unread.unreadable = why.toStdString();
            take({std::make_shared<const records::ReadRecords>(std::move(unread)), nullptr});
          }) {
  look_.setInterval(kLookEvery_ms);
  connect(&look_, &QTimer::timeout, this, &RecordsBeside::look);
}

RecordsBeside::Stamp RecordsBeside::stampNow() const {
  if (layout_path_.isEmpty()) return {};
  const QFileInfo file(
      QFile::decodeName(records::recordsFileOf(QFile::encodeName(layout_path_).toStdString()).c_str()));
  if (file.exists()) return {file.size(), file.lastModified().toMSecsSinceEpoch()};
  return file.isSymLink() ? Stamp{0, -1} : Stamp{};  // to what is not there
}

void RecordsBeside::follow(const QString& layout_path) {
  if (layout_path == layout_path_) return;
  layout_path_ = layout_path;
  stamp_ = {};
  reader_.leave();
  read_ = known_ = std::make_shared<records::ReadRecords>();
  come_to_.reset();
  are_missed_ = false;
  kept_.clear();
  failed_.reset();
  if (layout_path_.isEmpty())
    look_.stop();
  else
    look_.start();
  look();
  emit changed();
}

void RecordsBeside::setLayout(std::shared_ptr<const layout::Layout> layout,
                              std::shared_ptr<const layout::DeviceKinds> kinds) {
  if (layout == layout_ && kinds == kinds_) return;
  layout_ = std::move(layout);
  kinds_ = std::move(kinds);
  std::vector<inspection::DeviceNow> devices = planning::devicesNow(*layout_, *kinds_);
  if (devices == devices_) return;
  devices_ = std::move(devices);
  failed_.reset();
}

HeldAgainst RecordsBeside::heldAgainst(const inspection::Schedule& schedule) const {
  return {schedule, layout_, devices_, records::momentNow()};
}

void RecordsBeside::holdAgainst(const inspection::Schedule& schedule) {
  HeldAgainst held = heldAgainst(schedule);
  const std::lock_guard lock(holding_);
  hold_ = std::move(held);
}

std::shared_ptr<const ComeTo> RecordsBeside::comeTo(const inspection::Schedule& schedule) {
  HeldAgainst now = heldAgainst(schedule);
  if (!come_to_ || come_to_->by != now) come_to_ = comeToOf(read_, std::move(now));
  return come_to_;
}

void RecordsBeside::look() {
  const Stamp now = stampNow();
  if (now == stamp_) return;
  stamp_ = now;
  reader_.ask(QFile::encodeName(layout_path_).toStdString());
  emit begun();
}

void RecordsBeside::lookNow() {
  look();
  const int asked = reader_.asked();
  QEventLoop until_read;
  connect(this, &RecordsBeside::changed, &until_read, &QEventLoop::quit);
  while (!reader_.isAnswered(asked))
    if (until_read.exec(QEventLoop::ExcludeUserInputEvents) < 0) return;  // the program ends
}

void RecordsBeside::take(Answer answer) {
  failed_.reset();
  read_ = std::move(answer.read);
  come_to_ = std::move(answer.come_to);
  are_missed_ = !goesOn(*read_, *known_);
  if (!are_missed_) known_ = read_;
  emit changed();
}

void RecordsBeside::takeAsTheyAre() {
  if (!are_missed_) return;
  kept_ = failed(failed_ ? failed_->by : inspection::Schedule());
  kept_at_ = records::momentNow();
  kept_behind_ = read_->log.lines;
  known_ = read_;
  are_missed_ = false;
  failed_.reset();
  emit changed();
}

// As if each had been found when the records were gone on from: no check of before is held against what the
// log no longer says.
void RecordsBeside::addKept(std::vector<inspection::FailedDevice>& failed,
                            const inspection::Schedule& schedule) const {
  const std::vector<inspection::CheckChain> chains = inspection::chainsOf(records());
  inspection::Closing closing{schedule.retest_by_another, {records(), records::momentNow()}};
  for (inspection::FailedDevice kept : kept_) {
    if (std::ranges::find(failed, kept.device, &inspection::FailedDevice::device) != failed.end()) continue;
    inspection::Check failure;
    failure.number = kept_behind_, failure.device = kept.device, failure.machines = kept.machines;
    failure.at = kept_at_, failure.inspector = kept.found_by, failure.no_stop = kept.no_stop;
    failure.result = inspection::Result::Fail;
    const inspection::CheckChain found{{&failure}, instantOf(kept_at_)};
    inspection::Chains its = {&found};
    for (const inspection::CheckChain& chain : chains)
      if (chain.first().device == kept.device && instantOf(chain.earliest()) >= instantOf(kept_at_))
        its.push_back(&chain);
    const auto now = std::ranges::find(devices_, kept.device, &inspection::DeviceNow::id);
    closing.now = now == devices_.end() ? nullptr : &*now;
    const auto open = inspection::openFailure(its, closing);
    if (!open) continue;
    if (its.size() > 1) kept.removed = open->removed;
    failed.push_back(std::move(kept));
  }
}

const std::vector<inspection::FailedDevice>& RecordsBeside::failed(const inspection::Schedule& schedule) {
  const inspection::Moment moment = records::momentNow();
  const inspection::Date today = moment.date;
  const inspection::AsOf as_of{moment, devices_};
  if (failed_ && failed_->by == schedule && failed_->on == today) return failed_->devices;
  holdAgainst(schedule);
  const bool is_found = known_ == read_ && come_to_ && come_to_->by.schedule == schedule &&
                        come_to_->by.devices == devices_ && come_to_->by.now.day == today;
  std::vector<inspection::FailedDevice> failed =
      is_found ? come_to_->failed : inspection::failedDevices(known_->log.records, schedule, as_of);
  if (are_missed_)
    for (inspection::FailedDevice& now : inspection::failedDevices(records(), schedule, as_of))
      if (std::ranges::find(failed, now.device, &inspection::FailedDevice::device) == failed.end())
        failed.push_back(std::move(now));
  if (!kept_.empty()) addKept(failed, schedule);
  failed_ = {schedule, today, std::move(failed)};
  return failed_->devices;
}

QString RecordsBeside::fileName() const {
  return QFileInfo(QFile::decodeName(read_->file.c_str())).fileName();
}

QString RecordsBeside::unreadable() const {
  if (read_->unreadable.empty()) return {};
  const QString why = tr("The inspection records in %1 cannot be read, and are not taken into account: %2.")
                          .arg(fileName(), QString::fromStdString(read_->unreadable));
  if (!are_missed_) return why;
  return tr("%1 What had failed when they were last read still counts as failed.").arg(why);
}

QString RecordsBeside::missed() const {
  const QString what =
      !read_->there ? tr("The inspection records in %1 are gone: %2 that were read here.")
                          .arg(fileName())
                          .arg(known_->log.lines)
      : read_->log.lines == known_->log.lines
          ? tr("The inspection records in %1 are not as they were when they were last read.").arg(fileName())
          : tr("The inspection records in %1 are not all there any more, or not "
               "as they were: it held %2, now %3.")
                .arg(fileName())
                .arg(known_->log.lines)
                .arg(read_->log.lines);
  return tr("%1 Find out who moved or changed the file, and put it back. What failed by them still counts as "
            "failed here, and nothing is recorded until they are back or a round is started anew.")
      .arg(what);
}

QString RecordsBeside::trouble() const {
  QStringList said;
  if (!read_->unreadable.empty())
    said << unreadable();
  else if (are_missed_)
    said << missed();
  if (!read_->log.bad.empty())
    said << tr("Line %1 of the inspection records in %2 is not as it was written: %3. No pass counts up to "
               "line "
               "%4.")
                .arg(read_->log.bad.front().line)
                .arg(fileName(), rounds::reasonText(read_->log.bad.front().what))
                .arg(read_->log.records.unsure_to);
  if (const auto unread = std::ranges::count_if(read_->log.bad, &files::BadLine::unread))
    said << tr("Lines of it that cannot be read any more: %1. What failed by them is not known.").arg(unread);
  if (!read_->log.torn.empty())
    said
        << tr("The inspection records in %1 end in one that was never finished, or was cut or changed later: "
              "it does not count, and a failure may be in it. What is recorded next puts it aside into a "
              "file of its own.")
               .arg(fileName());
  if (!read_->also_of.empty())
    said << tr("%1 are the inspection records of %2 too: what failed in one counts as failed in the other. "
               "Save one of them under a name of its own.")
                .arg(fileName(), QFileInfo(QFile::decodeName(read_->also_of.c_str())).fileName());
  return said.join(' ');
}

}  // namespace stopwalk::window
