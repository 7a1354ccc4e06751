#include <gtest/gtest.h>

#include <QVBoxLayout>

#include "app/panels/fields/check_field.h"
#include "app/panels/fields/choice_field.h"
#include "app/panels/fields/number_field.h"
#include "app/panels/fields/text_field.h"
#include "tests/app/panels/person.h"

namespace stopwalk::panels {
namespace {

using layout::LengthUnit;

// A field in a window with another control to go to.
template <class F>
struct Shown {
  explicit Shown(F* f) : field(f) {
    auto* column = new QVBoxLayout(&window);
    if (f->label()) column->addWidget(f->label());
    column->addWidget(f);
    elsewhere = new QLineEdit(&window);
    column->addWidget(elsewhere);
    f->entered = [this](const typename F::Value& v) { entered.push_back(v); };
    bringUp(window);
  }

  QWidget window;
  F* field;
  QLineEdit* elsewhere;
  std::vector<typename F::Value> entered;
};

using Lengths = std::vector<std::optional<double>>;

LengthField* heightField(Known known = Known::Optional) {
  return new LengthField({"Height", "From the floor."}, Range::Positive, known);
}

TEST(LengthField, TakesAnyUnit) {
  const std::pair<const char*, double> cases[] = {{"1.2 m", 1200}, {"90 cm", 900}, {"4' 6\"", 1371.6},
                                                  {"3 ft", 914.4}, {"900", 900},   {" 850 mm ", 850}};
  for (const auto& [text, mm] : cases) {
    Shown<LengthField> s(heightField());
    s.field->show(100);
    enter(s.field->line(), text);
    EXPECT_EQ(s.entered, Lengths{mm}) << text;
  }
}

TEST(LengthField, ShowsAndMeansTheUnitOfTheLayout) {
  Shown<LengthField> s(heightField());
  s.field->show(1371.6);
  EXPECT_EQ(s.field->line()->text(), "1371.6 mm");
  s.field->setUnit(LengthUnit::Foot);
  EXPECT_EQ(s.field->line()->text(), "4' 6\"");
  s.field->setUnit(LengthUnit::Metre);
  EXPECT_EQ(s.field->line()->text(), "1.3716 m");
  enter(s.field->line(), "2");
  EXPECT_EQ(s.entered, Lengths{2000});
  EXPECT_EQ(s.field->line()->text(), "2 m");
}

TEST(LengthField, NeverRoundsWhatWasNotTyped) {
  Shown<LengthField> s(heightField());
  s.field->show(1000.0 / 3);
  EXPECT_EQ(s.field->line()->text(), "333 mm");
  s.field->line()->setFocus();
  QTest::keyClick(s.field->line(), Qt::Key_Return);
  s.elsewhere->setFocus();
  EXPECT_TRUE(s.entered.empty());
  EXPECT_EQ(s.field->value(), 1000.0 / 3);
}

TEST(LengthField, TellsBesideItWhatWouldBeAccepted) {
  Shown<LengthField> s(heightField());
  s.field->show(900);
  enter(s.field->line(), "tall");
  EXPECT_EQ(s.field->trouble(), "Not a length up to 10 km. Type it as 1.2 m, 4' 6\" or 900 (in mm).");
  EXPECT_EQ(s.field->line()->accessibleDescription(), s.field->trouble());
  enter(s.field->line(), "1,2 m");
  EXPECT_TRUE(s.field->trouble().contains("with a point")) << s.field->trouble().toStdString();
  enter(s.field->line(), "-3");
  EXPECT_EQ(s.field->trouble(), "It has to be more than 0.");
  EXPECT_TRUE(s.entered.empty());
  enter(s.field->line(), "900 mm");
  EXPECT_EQ(s.field->trouble(), "");
  EXPECT_TRUE(s.entered.empty());
}

TEST(LengthField, IsUnknownWhenEmptyIfItMayBe) {
  Shown<LengthField> s(heightField());
  s.field->show(900);
  enter(s.field->line(), "");
  EXPECT_EQ(s.entered, Lengths{std::nullopt});
  EXPECT_EQ(s.field->line()->placeholderText(), "unknown");
  Shown<LengthField> needed(heightField(Known::Always));
  needed.field->show(900);
  enter(needed.field->line(), "");
  EXPECT_TRUE(needed.entered.empty());
  EXPECT_NE(needed.field->trouble(), "");
}

TEST(LengthField, PutsBackWhatWasOnEscapeAndEntersOnLeaving) {
  Shown<LengthField> s(heightField());
  s.field->show(900);
  typeOver(s.field->line(), "12");
  QTest::keyClick(s.field->line(), Qt::Key_Escape);
  EXPECT_EQ(s.field->line()->text(), "900 mm");
  s.elsewhere->setFocus();
  EXPECT_TRUE(s.entered.empty());
  typeOver(s.field->line(), "950");
  s.elsewhere->setFocus();
  EXPECT_EQ(s.entered, Lengths{950});
}

TEST(LengthField, GoesWhileItIsTypedIn) {
  Shown<LengthField> s(heightField());
  s.field->show(900);
  typeOver(s.field->line(), "12");
  delete s.field;
  EXPECT_TRUE(s.entered.empty());
}

TEST(LengthField, StepsByArrows) {
  Shown<LengthField> s(heightField());
  s.field->show(95);
  s.field->line()->setFocus();
  QTest::keyClick(s.field->line(), Qt::Key_Up);
  QTest::keyClick(s.field->line(), Qt::Key_Up, Qt::ShiftModifier);
  QTest::keyClick(s.field->line(), Qt::Key_Down);
  EXPECT_EQ(s.entered, (Lengths{105, 205, 195}));
  s.field->show(5);
  QTest::keyClick(s.field->line(), Qt::Key_Down);
  EXPECT_EQ(s.field->value(), 5);
  s.field->setUnit(LengthUnit::Foot);
  QTest::keyClick(s.field->line(), Qt::Key_Up);
  EXPECT_DOUBLE_EQ(*s.field->value(), 30.4);
}

TEST(LengthField, KeepsWhatIsBeingTypedWhileOtherThingsChange) {
  Shown<LengthField> s(heightField());
  s.field->show(900);
  typeOver(s.field->line(), "12");
  s.field->show(900);
  EXPECT_EQ(s.field->line()->text(), "12");
  s.field->show(800);
  EXPECT_EQ(s.field->line()->text(), "800 mm");
}

TEST(LengthField, OfDifferingThingsSaysSoAndTakesOneForAll) {
  Shown<LengthField> s(heightField());
  s.field->showDiffering();
  EXPECT_EQ(s.field->line()->text(), "");
  EXPECT_EQ(s.field->line()->placeholderText(), "differ");
  s.field->line()->setFocus();
  QTest::keyClick(s.field->line(), Qt::Key_Up);
  QTest::keyClick(s.field->line(), Qt::Key_Return);
  EXPECT_TRUE(s.entered.empty());
  enter(s.field->line(), "unknown");
  EXPECT_EQ(s.entered, Lengths{std::nullopt});
}

TEST(NumberField, TakesAnglesAndSecondsWithTheirUnits) {
  Shown<NumberField> angle(new NumberField({"Turn"}, angleKind(), Known::Always));
  angle.field->show(90);
  EXPECT_EQ(angle.field->line()->text(), "90°");
  enter(angle.field->line(), "45 deg");
  enter(angle.field->line(), "-30°");
  EXPECT_EQ(angle.entered, (Lengths{45, -30}));
  Shown<NumberField> seconds(new NumberField({"Run-down"}, secondsKind(), Known::Optional));
  seconds.field->show(std::nullopt);
  enter(seconds.field->line(), "2.5 s");
  QTest::keyClick(seconds.field->line(), Qt::Key_Up);
  enter(seconds.field->line(), "-1");
  EXPECT_EQ(seconds.entered, (Lengths{2.5, 2.6}));
  EXPECT_EQ(seconds.field->trouble(), "It has to be from 0 s to 1000000 s.");
}

TEST(IdTrouble, SaysWhatAnIdMayHold) {
  EXPECT_EQ(idTrouble("saw-2"), "");
  for (const char* bad : {"", "Saw", "saw 2", "saw/2", "all", "outside", "säge"})
    EXPECT_NE(idTrouble(bad), "") << bad;
}

TEST(DateField, TakesDaysThatThereAre) {
  Shown<DateField> s(new DateField({"Date"}));
  s.field->show("2026-02-28");
  s.field->line()->setFocus();
  QTest::keyClick(s.field->line(), Qt::Key_Up);
  enter(s.field->line(), "2026-02-30");
  EXPECT_EQ(s.entered, (std::vector<std::string>{"2026-03-01"}));
  EXPECT_EQ(s.field->trouble(), "Not a day. Type it as year, month, day: 2026-03-02.");
}

TEST(ChoiceField, ShowsWhatIsNoOptionAndTakesByKeyboard) {
  Shown<ChoiceField> s(new ChoiceField({"Locked"}, {{"never", "never"}, {"always", "always"}}));
  s.field->show("sometimes");
  EXPECT_EQ(s.field->box()->currentText(), "sometimes");
  s.field->box()->setFocus();
  QTest::keyClick(s.field->box(), Qt::Key_Up);
  EXPECT_EQ(s.entered, std::vector<std::string>{"always"});
  s.field->showDiffering();
  EXPECT_EQ(s.field->box()->currentIndex(), -1);
}

TEST(CheckField, OfDifferingThingsTakesOneForAll) {
  Shown<CheckField> s(new CheckField({"Outdoors"}));
  s.field->showDiffering();
  EXPECT_EQ(s.field->box()->checkState(), Qt::PartiallyChecked);
  s.field->box()->setFocus();
  QTest::keyClick(s.field->box(), Qt::Key_Space);
  EXPECT_EQ(s.entered.size(), 1u);
  EXPECT_NE(s.field->box()->checkState(), Qt::PartiallyChecked);
}

TEST(Field, HasALabelThatLeadsToIt) {
  Shown<LengthField> s(heightField());
  ASSERT_TRUE(s.field->label());
  EXPECT_EQ(s.field->label()->buddy(), s.field->line());
  EXPECT_EQ(s.field->line()->accessibleName(), "Height");
  EXPECT_EQ(s.field->line()->whatsThis(), "From the floor.");
}

}  // namespace
}  // namespace stopwalk::panels
