// Paints layouts at three zooms, light and dark, for someone to look at: plan_pictures FOLDER LAYOUT...
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QImage>
#include <cstdio>

#include "app/plan/catalogue.h"
#include "app/plan/picture.h"
#include "app/plan/reach_layer.h"
#include "app/plan/symbols.h"
#include "core/files/layout_reader.h"

namespace stopwalk::plan {
namespace {

constexpr QSize kView(1400, 900);

// One of each in turn, so that all are seen.
std::map<std::string, StationState> someStates(const layout::Layout& layout) {
  std::map<std::string, StationState> states;
  int i = 0;
  for (const edits::Thing& thing : edits::allThings(layout))
    if (thing.kind == edits::ThingKind::Station)
      states[edits::idOf(layout, thing)] = static_cast<StationState>(i++ % 7);
  return states;
}

QImage painted(const layout::Layout& layout, const ViewTransform& view, const Theme& theme,
               const ReachLayer* reach = nullptr) {
  const Picture picture(layout, bundledCatalogue().kinds);
  const auto states = someStates(layout);
  const std::string first = layout.machines.empty() ? "" : layout.machines[0].id;
  QImage image(kView, QImage::Format_ARGB32_Premultiplied);
  image.fill(theme.outside);
  QPainter painter(&image);
  Marks marks{[&](const std::string& id) { return id == first; }, "", &states};
  if (reach) marks.on_floors = [&](QPainter& p) { reach->paint(p, {view, theme, kView}, true); };
  picture.paint(painter, view, theme, QRectF(QPointF(), kView), marks);
  if (reach) reach->paintLegend(painter, theme, QRectF(QPointF(), kView), true);
  return image;
}

void showLayout(const QDir& folder, const QString& path) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) return;
  const auto read =
      files::readLayout(file.readAll().toStdString(), path.toStdString(), bundledCatalogue().kinds);
  if (!read.value) return;
  const geometry::Box all = Picture(*read.value, bundledCatalogue().kinds).bounds();
  const ReachLayer reach(std::make_shared<const audit::Reach>(audit::reachOf(
                             *read.value, bundledCatalogue().kinds, floor::Hours::Open, {}, 8000)),
                         *read.value);
  for (const bool dark : {false, true})
    for (const int zoom : {0, 1, 2}) {
      const Theme theme = dark ? Theme::darkened() : Theme::light();
      ViewTransform view;
      view.fit(all, kView, 30);
      const QPointF middle =
          read.value->machines.empty() ? QPointF(700, 450) : view.toPixels(read.value->machines[0].at);
      if (zoom == 1) view.zoomAt(middle, 2.5);
      if (zoom == 2) view.zoomAt(middle, 8);
      const QString name =
          QFileInfo(path).baseName() + QStringLiteral("-%1-%2.png").arg(zoom).arg(dark ? "dark" : "light");
      painted(*read.value, view, theme).save(folder.filePath(name));
      if (zoom < 2) painted(*read.value, view, theme, &reach).save(folder.filePath("reach-" + name));
    }
}

void showSymbols(const QDir& folder, const Theme& theme, const QString& name) {
  const QStringList keys = QDir(":/symbols").entryList();
  QImage image(static_cast<int>(keys.size()) * 40 + 20, 500, QImage::Format_ARGB32_Premultiplied);
  image.fill(theme.floor);
  QPainter painter(&image);
  for (int i = 0; i < keys.size(); ++i) {
    const std::string key = QFileInfo(keys[i]).baseName().toStdString();
    int y = 10;
    for (const Ground ground : {Ground::None, Ground::Stop, Ground::Start, Ground::Phone})
      for (const int side : {16, 24, 32}) {
        paintSymbol(painter, QRectF(10 + 40 * i, y, side, side), key, ground, theme);
        y += side + 12;
      }
  }
  painter.end();
  image.save(folder.filePath(name));
}

}  // namespace
}  // namespace stopwalk::plan

int main(int count, char** arguments) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QGuiApplication application(count, arguments);
  using namespace stopwalk::plan;
  if (count < 2) {
    std::fputs("usage: plan_pictures FOLDER LAYOUT...\n", stderr);
    return 2;
  }
  const QDir folder(arguments[1]);
  folder.mkpath(".");
  for (int i = 2; i < count; ++i) showLayout(folder, arguments[i]);
  showSymbols(folder, Theme::light(), "symbols-light.png");
  showSymbols(folder, Theme::darkened(), "symbols-dark.png");
}
