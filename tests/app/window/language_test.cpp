// The window in each of its languages.
#include "app/window/language.h"

#include <QAbstractButton>
#include <QLabel>
#include <QMenuBar>
#include <QTabWidget>
#include <QTranslator>
#include <QTreeWidget>

#include "app/panels/actions/action_finder.h"
#include "app/panels/findings/finding_list.h"
#include "app/window/audit_place.h"
#include "app/window/notice_bar.h"
#include "tests/app/window/person.h"

namespace stopwalk::window {
namespace {

// Remembers the program's own texts that no translation was found for.
class Untranslated : public QTranslator {
 public:
  bool isEmpty() const override { return false; }
  QString translate(const char* context, const char* text, const char*, int) const override {
    const QString of = QString::fromUtf8(context);
    const bool is_qts = of.startsWith('Q') || of.startsWith("MAC_") || of.startsWith("CloseButton");
    if (!is_qts && text && *text) texts.insert(of + ": " + QString::fromUtf8(text));
    return {};
  }
  mutable QSet<QString> texts;
};

// Before the window is made, as in the program.
class Speaking {
 protected:
  Speaking() {
    QCoreApplication::installTranslator(&untranslated);  // what comes later is asked first
    speak(QString::fromStdString(testing::WithParamInterface<std::string>::GetParam()));
  }
  ~Speaking() {
    qDeleteAll(QCoreApplication::instance()->findChildren<QTranslator*>());
    QLocale::setDefault(QLocale::system());
  }

  Untranslated untranslated;
};

class InLanguage : public Speaking, public AtTheWindow, public testing::WithParamInterface<std::string> {
 protected:
  void selectEachThing() {
    for (const edits::Thing& thing : edits::allThings(layout())) {
      window->selection().set(edits::idOf(layout(), thing));
      settle();
    }
    window->selection().set({layout().machines[0].id, layout().machines[1].id});
    settle();
    window->selection().clear();
  }
  void takeUpEachTool() {
    using What = plan::Choice::What;
    for (const plan::Choice& choice :
         {plan::Choice{What::Room}, plan::Choice{What::RoomByCorners}, plan::Choice{What::Door},
          plan::Choice{What::Machine, "table-saw"}, plan::Choice{What::Device, "mushroom-button"},
          plan::Choice{What::Station, "helper"}, plan::Choice{What::Phone},
          plan::Choice{What::Fixture, "rack"}, plan::Choice{What::Note}, plan::Choice{What::TapeCheck},
          plan::Choice{What::ScaleUnderlay}}) {
      choose(choice);
      click({2000, 2000});
      click({2600, 2700});
      key(Qt::Key_Escape);
    }
    choose({});
  }
  void suppose() {
    planning::Suppositions what_if;
    what_if.out_of_order = {"table-saw/paddle"};
    what_if.hours = floor::Hours::After;
    layout::Fixture pallet;
    pallet.id = "in-the-way-1";
    pallet.at = {6600, 7000};
    pallet.footprint = layout::Rectangle{1200, 800};
    what_if.in_the_way = {pallet};
    window->suppose(what_if);
    QTest::qWait(500);
    window->suppose({});
  }
};

QStringList textsOf(const QList<QAction*>& actions) {
  QStringList texts;
  for (const QAction* action : actions) texts << action->text();
  return texts;
}

QStringList textsInSight(const QWidget& window) {
  QStringList texts;
  for (const auto* button : window.findChildren<QAbstractButton*>())
    if (button->isVisible()) texts << button->text();
  for (const auto* label : window.findChildren<QLabel*>())
    if (label->isVisible() && label->buddy()) texts << label->text();
  return texts;
}

QStringList sharedMnemonics(const QStringList& texts) {
  QMap<QString, QStringList> by_letter;
  for (const QString& text : texts) {
    const QKeySequence key = QKeySequence::mnemonic(text);
    if (!key.isEmpty()) by_letter[key.toString()] << text;
  }
  QStringList shared;
  for (const QStringList& same : by_letter)
    if (same.size() > 1) shared << same.join(" / ");
  return shared;
}

TEST_P(InLanguage, SaysNothingThatIsNotTranslated) {
  window->files().openSample("tram-depot.layout.yaml");
  QTest::qWait(500);
  selectEachThing();
  takeUpEachTool();
  window->goToPlace(WorkPlace::Audit);
  QTest::qWait(500);
  auto& audit = window->auditPlace();
  for (int page = 0; page < audit.tabs().count(); ++page) audit.tabs().setCurrentIndex(page);
  auto* findings = audit.findings().tree();
  for (int i = 0; i < findings->topLevelItemCount(); ++i)
    findings->setCurrentItem(findings->topLevelItem(i)->child(0));
  suppose();
  panels::ActionFinder finder(window.get());
  finder.show();
  settle();
  if (GetParam() == "en")
    EXPECT_GT(untranslated.texts.size(), 300);  // those that the other languages have to have
  else
    EXPECT_EQ(QStringList(untranslated.texts.values()).join("\n"), "");
}

TEST_P(InLanguage, GivesNoLetterToTwoActionsOfAMenu) {
  EXPECT_EQ(sharedMnemonics(textsOf(window->menuBar()->actions())).join("\n"), "");
  for (const QMenu* menu : window->menuBar()->findChildren<QMenu*>())
    EXPECT_EQ(sharedMnemonics(textsOf(menu->actions())).join("\n"), "") << qPrintable(menu->title());
}

TEST_P(InLanguage, GivesNoKeyToTwoActions) {
  QMap<QString, QStringList> by_key;
  for (const QAction* action : window->findChildren<QAction*>())
    if (action->shortcutContext() != Qt::WidgetShortcut)
      for (const QKeySequence& key : action->shortcuts()) by_key[key.toString()] << action->text();
  EXPECT_GT(by_key.size(), 40);
  for (const QStringList& same : by_key) EXPECT_EQ(same.size(), 1) << same.join(" / ").toStdString();
}

TEST_P(InLanguage, GivesNoLetterToTwoThingsInSightAtOnce) {
  window->files().openSample("tram-depot.layout.yaml");
  window->goToPlace(WorkPlace::Audit);
  QTest::qWait(300);
  auto& audit = window->auditPlace();
  for (int page = 0; page < audit.tabs().count(); ++page) {
    audit.tabs().setCurrentIndex(page);
    settle();
    const QStringList all = textsOf(window->menuBar()->actions()) + textsInSight(*window);
    EXPECT_EQ(sharedMnemonics(all).join("\n"), "") << qPrintable(audit.tabs().tabText(page));
  }
}

TEST_P(InLanguage, HasARoomForAllItsWordsOnASmallScreen) {
  window->files().openSample("tram-depot.layout.yaml");
  for (const auto place : {WorkPlace::Draw, WorkPlace::Audit}) {
    window->goToPlace(place);
    QTest::qWait(50);
    EXPECT_LE(window->minimumSizeHint().width(), 1024);
    EXPECT_LE(window->minimumSizeHint().height(), 700);
  }
}

INSTANTIATE_TEST_SUITE_P(Of, InLanguage, testing::Values("en", "es", "de"),
                         [](const auto& language) { return language.param; });

TEST(WindowLanguage, IsTheOneKeptElseTheSystemsElseEnglish) {
  EXPECT_EQ(languageToSpeak("de", {"es-MX"}), "de");
  EXPECT_EQ(languageToSpeak("", {"es-MX", "en-US"}), "es");
  EXPECT_EQ(languageToSpeak("", {"fr-FR", "de"}), "de");
  EXPECT_EQ(languageToSpeak("", {"fr-FR"}), "en");
  EXPECT_EQ(languageToSpeak("tlh", {}), "en");
}

using LanguageMenu = AtTheWindow;

TEST_F(LanguageMenu, KeepsTheChoiceAndSaysThatItHoldsFromTheNextStart) {
  QAction* german = nullptr;
  QAction* system = nullptr;
  for (QMenu* menu : window->menuBar()->findChildren<QMenu*>())
    for (QAction* action : menu->actions()) {
      if (action->text() == "Deutsch") german = action;
      if (action->text() == "As the computer has it") system = action;
    }
  ASSERT_TRUE(german && system);
  EXPECT_TRUE(system->isChecked());
  german->trigger();
  EXPECT_EQ(keptLanguage(settings), "de");
  EXPECT_TRUE(window->notices().text().contains("next start"));
  EXPECT_EQ(window->menuBar()->actions().front()->text(), "&File");
  system->trigger();
  EXPECT_EQ(keptLanguage(settings), "");
}

}  // namespace
}  // namespace stopwalk::window
