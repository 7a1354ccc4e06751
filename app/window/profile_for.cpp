#include "app/window/profile_for.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <algorithm>

#include "app/shop_files/file_beside.h"
#include "core/files/profile_reader.h"

namespace stopwalk::window {
namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(window)
};

ProfileFor usual(const QString& why, const QStringList& files) {
  return {*files::bundledProfile(audit::kDefaultProfile),
          Words::tr("%1 The layout is audited by the usual profile, %2.").arg(why, audit::kDefaultProfile),
          why, files};
}

QString firstError(const std::vector<files::Diagnostic>& diagnostics) {
  for (const files::Diagnostic& d : diagnostics)
    if (d.severity == files::Severity::Error)
      return Words::tr("line %1: %2").arg(d.line).arg(QString::fromStdString(d.text));
  return {};
}

}  // namespace

ProfileFor profileFor(const layout::Layout& layout, const QString& path) {
  const std::string name = layout.profile.empty() ? audit::kDefaultProfile : layout.profile;
  if (auto bundled = files::bundledProfile(name)) return {std::move(*bundled), {}, {}, {}};
  const QString shown = QString::fromStdString(name);
  // A layout without a file has nothing beside it.
  QStringList files;
  const auto beside = [&](const std::string& asked, const std::string& file) {
    files << QDir(QFileInfo(QString::fromStdString(file)).absolutePath())
                 .absoluteFilePath(QString::fromStdString(asked));
    return app::fileBeside(asked, file);
  };
  const auto source = path.isEmpty() ? std::nullopt : beside(name, path.toStdString());
  if (!source)
    return usual(Words::tr("There is no profile `%1`%2, and no such file beside the layout.")
                     .arg(shown, QString::fromStdString(audit::nearestName(name, files::bundledProfiles()))),
                 files);
  auto read = files::readProfile(*source, beside);
  if (read.value) return {std::move(*read.value), {}, {}, files};
  return usual(Words::tr("The profile %1 cannot be read (%2).").arg(shown, firstError(read.diagnostics)),
               files);
}

}  // namespace stopwalk::window
