#include "app/window/profile_for.h"

#include <QCoreApplication>
#include <filesystem>

#include "app/shop_files/text_file.h"
#include "core/files/profile_reader.h"

namespace stopwalk::window {
namespace {

std::optional<files::NamedText> textBeside(const std::string& asked, const std::string& beside) {
  const std::string path = (std::filesystem::path(beside).parent_path() / asked).string();
  auto text = app::textOfFile(path);
  return text ? std::optional<files::NamedText>({path, std::move(*text)}) : std::nullopt;
}

}  // namespace

ProfileFor profileFor(const layout::Layout& layout, const QString& path) {
  const std::string name = layout.profile.empty() ? audit::kDefaultProfile : layout.profile;
  if (auto bundled = files::bundledProfile(name)) return {std::move(*bundled), {}};
  const ProfileFor usual{
      *files::bundledProfile(audit::kDefaultProfile),
      QCoreApplication::translate("window", "The profile %1 cannot be read; the usual one is used.")
          .arg(QString::fromStdString(name))};
  if (path.isEmpty()) return usual;
  const auto source = textBeside(name, path.toStdString());
  if (!source) return usual;
  auto read = files::readProfile(*source, textBeside);
  return read.value ? ProfileFor{std::move(*read.value), {}} : usual;
}

}  // namespace stopwalk::window
