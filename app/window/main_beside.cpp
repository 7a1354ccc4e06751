// What the window does when the shop's own files or the profile beside the layout are changed by another
// program.
#include <QDir>
#include <QFileInfo>

#include "app/shop_files/shop_files.h"
#include "app/window/audit_place.h"
#include "app/window/files_beside.h"
#include "app/window/main_window.h"
#include "app/window/notice_bar.h"
#include "app/window/profile_for.h"

namespace stopwalk::window {
namespace {

QString namesOf(const QStringList& paths) {
  QStringList names;
  for (const QString& path : paths) names << QFileInfo(path).fileName();
  return names.join(QStringLiteral(", "));
}

QStringList shopFilesIn(const QDir& folder) {
  return {folder.absoluteFilePath(app::kKindsFile), folder.absoluteFilePath(app::kTemplatesFile)};
}

QStringList thereOf(QStringList paths) {
  paths.removeIf([](const QString& path) { return !QFileInfo::exists(path); });
  return paths;
}

}  // namespace

void MainWindow::takeProfile(ProfileFor found) {
  if (found.trouble.isEmpty())
    notices_->clear("profile");
  else
    notices_->show("profile", found.trouble, {});
  profile_ = std::move(found.profile);
  profile_files_ = std::move(found.files);
  profile_is_own_ = found.why.isEmpty();
  audit_place_->setProfile(profile_, found.trouble);
  followFilesBeside();
}

QStringList MainWindow::shopFilesThere() const {
  return document_->path().isEmpty() ? QStringList() : thereOf(shopFilesIn(document_->folder()));
}

void MainWindow::followFilesBeside() {
  if (document_->path().isEmpty()) return files_beside_->follow({});
  files_beside_->follow(shopFilesIn(document_->folder()) + profile_files_);
}

// What cannot be used leaves in use what was read before: told until it can.
void MainWindow::filesBesideChanged(const QStringList& paths) {
  QStringList profile, shop;
  for (const QString& path : paths) (profile_files_.contains(path) ? profile : shop) << path;
  if (!shop.isEmpty()) readShopFilesAgain(shop);
  if (!profile.isEmpty()) readProfileAgain(profile);
  audit();
  showFailed();
}

void MainWindow::readShopFilesAgain(const QStringList& paths) {
  auto [catalogue, why] = files_->readAgain();
  if (thereOf(shop_files_) != shop_files_) why = tr("it is gone");
  if (!why.isEmpty())
    return notices_->show(
        "shop files",
        tr("%1 was changed by another program, and cannot be used as it is now: %2. The kinds of device and "
           "machine templates that were read before stay in use until it can.")
            .arg(namesOf(paths), why.trimmed()),
        {}, NoticeBar::Weight::Grave);
  const auto profile_of = profile_of_;
  document_->setCatalogue(std::move(catalogue));
  profile_of_ = profile_of;  // the profile is the same
  notices_->show("shop files",
                 tr("%1 was changed by another program, and was read again: the layout is audited by what "
                    "it says now.")
                     .arg(namesOf(paths)),
                 {{tr("Close"), {}}});
}

void MainWindow::readProfileAgain(const QStringList& paths) {
  ProfileFor found = profileFor(*shown_, document_->path());
  if (!found.why.isEmpty() && profile_is_own_) {
    const QString kept = tr("%1 was changed by another program. %2 The profile as it was read before stays "
                            "in use until it can be read again.")
                             .arg(namesOf(paths), found.why);
    notices_->show("profile", kept, {}, NoticeBar::Weight::Grave);
    return audit_place_->setProfile(profile_, kept);
  }
  const bool is_read = found.why.isEmpty();
  takeProfile(std::move(found));
  if (is_read)
    notices_->show("profile",
                   tr("%1 was changed by another program, and was read again: the layout is audited by what "
                      "it says now.")
                       .arg(namesOf(paths)),
                   {{tr("Close"), {}}});
}

}  // namespace stopwalk::window
