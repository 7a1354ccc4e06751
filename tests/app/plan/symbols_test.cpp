#include "app/plan/symbols.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plan/catalogue.h"

namespace stopwalk::plan {
namespace {

constexpr int kSide = 24;

const std::vector<layout::DeviceKind>& bundledKinds() {
  static const layout::DeviceKinds kinds = bundledCatalogue().kinds;
  return kinds.all();
}

// In grey, all on the same ground, so that only the sign tells them apart.
QImage inGrey(const std::string& key, int side = kSide) {
  QImage image(side, side, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paintSymbol(painter, QRectF(0, 0, side, side), key, Ground::Stop, Theme::light());
  return image.convertToFormat(QImage::Format_Grayscale8);
}

// Mean difference of the pixels, 0 to 255.
double difference(const QImage& a, const QImage& b) {
  double sum = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) sum += std::abs(a.constScanLine(y)[x] - b.constScanLine(y)[x]);
  return sum / (a.width() * a.height());
}

// How far apart a picture of nothing but the sign's colour and one of nothing but the ground's would be.
double full() {
  return std::abs(qGray(Theme::light().stop_sign.rgb()) - qGray(Theme::light().stop_ground.rgb()));
}

std::vector<std::string> signsOnThePlan() {
  std::vector<std::string> keys{"phone", "unknown"};
  for (const layout::DeviceKind& kind : bundledKinds()) keys.push_back(kind.symbol);
  return keys;
}

TEST(Symbols, EveryDeviceKindHasOne) {
  for (const layout::DeviceKind& kind : bundledKinds()) EXPECT_TRUE(hasSymbol(kind.symbol)) << kind.symbol;
}

TEST(Symbols, GalleryHasThemAll) {
  for (const char* key :
       {"room", "outline", "door", "machine", "bench", "column", "rack", "note", "tape-check", "underlay",
        "station-operator", "station-helper", "station-setter", "station-instructor", "phone", "select"}) {
    EXPECT_TRUE(hasSymbol(key)) << key;
    EXPECT_TRUE(symbol(key, Qt::black, Qt::white).isValid()) << key;
    EXPECT_FALSE(symbolIcon(key, Ground::None, Theme::light()).isNull()) << key;
  }
}

// A twelfth of all pixels changed from ground to sign is a difference that a glance sees at 24 px.
TEST(Symbols, DifferInGreyAtSixteenAndTwentyFourPixels) {
  const auto keys = signsOnThePlan();
  double least = 255;
  std::string nearest;
  for (const int side : {16, 24})
    for (std::size_t i = 0; i < keys.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) {
        const double d = difference(inGrey(keys[i], side), inGrey(keys[k], side)) / full();
        EXPECT_GT(d, 1.0 / 12) << keys[i] << " and " << keys[k] << " at " << side;
        if (d < least) least = d, nearest = keys[i] + " and " + keys[k];
      }
  RecordProperty("least_difference", std::to_string(least));
  RecordProperty("nearest_pair", nearest);
}

TEST(Symbols, EachIsSeenOnItsGround) {
  QImage bare(kSide, kSide, QImage::Format_RGB32);
  bare.fill(Theme::light().stop_ground);
  const QImage ground = bare.convertToFormat(QImage::Format_Grayscale8);
  for (const std::string& key : signsOnThePlan())
    EXPECT_GT(difference(inGrey(key), ground) / full(), 0.1) << key;
}

TEST(Symbols, UnknownKeyIsThePlainSign) {
  EXPECT_FALSE(hasSymbol("of-a-shop-somewhere"));
  EXPECT_EQ(inGrey("of-a-shop-somewhere"), inGrey("unknown"));
  EXPECT_EQ(inGrey("../theme"), inGrey("unknown"));
}

TEST(Symbols, GuardedStartIsNeitherRedNorYellow) {
  const auto kinds = bundledCatalogue().kinds;
  EXPECT_EQ(groundOf(*kinds.find("guarded-start")), Ground::Start);
  QImage image(32, 32, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paintSymbol(painter, QRectF(0, 0, 32, 32), "guarded-start", Ground::Start, Theme::light());
  painter.end();
  for (int y = 0; y < 32; ++y)
    for (int x = 0; x < 32; ++x) EXPECT_LT(image.pixelColor(x, y).hsvSaturation(), 64);
}

TEST(Symbols, WhatStopsStandsOnYellow) {
  for (const layout::DeviceKind& kind : bundledKinds())
    EXPECT_EQ(groundOf(kind) == Ground::Stop, kind.counts_as_stop) << kind.key;
}

}  // namespace
}  // namespace stopwalk::plan
