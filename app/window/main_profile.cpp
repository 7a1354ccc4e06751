// The profile that the layout is audited by, as a file: saved for others, and chosen from those of the shop.
#include <QDir>
#include <QFileInfo>
#include <QLabel>

#include "app/documents/safe_write.h"
#include "app/edits/change_things.h"
#include "app/window/main_window.h"
#include "app/window/profile_for.h"
#include "core/files/map_reader.h"
#include "core/files/profile_writer.h"

namespace stopwalk::window {
namespace {

// "Our shop, 2026.yaml" is the profile `our-shop-2026`.
std::string idFor(const QString& path) {
  std::string id;
  for (const QChar c : QFileInfo(path).completeBaseName().toLower()) {
    const char letter = c.toLatin1();
    if (files::isId({&letter, 1}))
      id += letter;
    else if (!id.empty() && id.back() != '-')
      id += '-';
  }
  return id.empty() ? "house-rules" : id;
}

}  // namespace

// With the house's own rules in it; those stay in the layout as well.
void MainWindow::saveProfile() {
  files_->endTyping();
  const QString path = asker_.profileToSave(QDir(document_->folder()).filePath(tr("house-rules") + ".yaml"));
  if (path.isEmpty()) return;
  const layout::Layout& layout = document_->edited().layout();
  audit::Profile profile = audit::withHouseRules(profile_, layout.house_rules);
  profile.id = idFor(path);
  const QString shop = QString::fromStdString(layout.site.name);
  profile.name =
      tr("Rules of %1").arg(shop.isEmpty() ? QFileInfo(path).completeBaseName() : shop).toStdString();
  documents::WriteResult result;
  const QStringList read_from = document_->readFrom() + profile_files_;  // and what they extend
  aside_([&] { result = documents::writeProfile(path, files::writeProfile(profile), read_from); });
  tellWritten(path, result, tr("All rules, as they are kept here, are in %1.").arg(path));
}

// Named as from the layout's own folder, so that it is found wherever the folder goes.
void MainWindow::chooseProfileFile() {
  files_->endTyping();
  const auto refuse = [this](const QString& why) {
    asker_.ask({tr("That profile cannot be chosen"), why, {tr("OK")}});
  };
  if (document_->path().isEmpty())
    return refuse(tr("Save the layout first: a profile file stands beside it."));
  const QString path = asker_.profileToOpen(document_->folder());
  if (path.isEmpty()) return;
  layout::Layout named = document_->edited().layout();
  named.profile = QDir(document_->folder()).relativeFilePath(path).toStdString();
  if (named.profile.starts_with("..") || QDir::isAbsolutePath(QString::fromStdString(named.profile)))
    return refuse(
        tr("It must stand in the folder of the layout or below, so that it goes where the layout goes."));
  if (const ProfileFor found = profileFor(named, document_->path()); !found.why.isEmpty())
    return refuse(found.why);
  apply(edits::setProfile(document_->edited().layout(), named.profile));
}

}  // namespace stopwalk::window
