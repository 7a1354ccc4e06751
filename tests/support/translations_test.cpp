// Tests of the translations as they are written: every text that the program says is there, and can take the
// English one's place.
#include "tests/support/translations.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <set>

#include "app/poster/texts.h"
#include "app/poster/words.h"
#include "core/files/device_kinds_reader.h"

namespace stopwalk::translations {
namespace {

const QString root = STOPWALK_ROOT;

QString fileOf(const std::string& language) {
  return root + "/resources/translations/stopwalk_" + QString::fromStdString(language) + ".ts";
}

std::vector<std::string> translatedLanguages() {
  std::vector<std::string> keys;
  for (const poster::LanguageName& language : poster::posterLanguages())
    if (language.key != "en") keys.push_back(language.key);
  return keys;
}

std::vector<Message> read(const QString& file) {
  QString why;
  std::vector<Message> messages = messagesOf(file, why);
  EXPECT_EQ(why, QString());
  return messages;
}

class Translations : public testing::TestWithParam<std::string> {
 protected:
  std::vector<Message> messages = read(fileOf(GetParam()));
};

Message message(const char* source, QStringList forms) {
  return {"MainWindow", source, {}, std::move(forms), false, true};
}

TEST(TranslationFaults, AreFound) {
  EXPECT_EQ(faultsOf(message("Save %1 as…", {"%1 speichern unter…"})), QStringList());
  EXPECT_EQ(faultsOf(message("Save %1", {""})), QStringList{"is not translated"});
  EXPECT_EQ(faultsOf(message("Save %1", {"Speichern"})), QStringList{"placeholders differ"});
  EXPECT_EQ(faultsOf(message("Save", {"%1 speichern"})), QStringList{"placeholders differ"});
  EXPECT_EQ(faultsOf(message("%n doors", {"%n Türen", "Tür"})), QStringList{"placeholders differ"});
  EXPECT_EQ(faultsOf(message("%1 and %1", {"%1 und"})), QStringList{"placeholders differ"});
  EXPECT_EQ(faultsOf(message("&Save", {"Speichern"})), QStringList{"mnemonics differ"});
  EXPECT_EQ(faultsOf(message("Save", {"&Speichern"})), QStringList{"mnemonics differ"});
  EXPECT_EQ(faultsOf(message("Save…", {"Speichern..."})), QStringList{"dots at the end differ"});
  EXPECT_EQ(faultsOf(message("Limit:", {"Grenzwert"})), QStringList{"colons at the end differ"});
  EXPECT_EQ(faultsOf(message(" s", {"s"})), QStringList{"spaces at the ends differ"});
  EXPECT_EQ(faultsOf(message("<b>Stop</b>", {"<b>Stopp"})), QStringList{"tags differ"});
  Message unfinished = message("Save", {"Speichern"});
  unfinished.finished = false;
  EXPECT_EQ(faultsOf(unfinished), QStringList{"is not finished"});
  Message key = message("Ctrl+D", {"Strg+D"});
  key.context = "stopwalk::window::MainWindow";
  EXPECT_EQ(faultsOf(key), QStringList{"keys differ"});
}

TEST_P(Translations, HaveNoFaults) {
  ASSERT_GT(messages.size(), 800u);
  for (const Message& m : messages)
    EXPECT_EQ(faultsOf(m), QStringList()) << GetParam() << ", " << qPrintable(m.named());
}

// As if somebody ran resources/translations/update.sh now.
TEST_P(Translations, AreOfTheTextsThatTheProgramSaysNow) {
  QTemporaryDir folder;
  const QString copy = folder.filePath("now_" + QString::fromStdString(GetParam()) + ".ts");
  ASSERT_TRUE(QFile::copy(fileOf(GetParam()), copy));
  qputenv("LUPDATE", STOPWALK_LUPDATE);
  QProcess update;
  update.start(root + "/resources/translations/update.sh", {copy});
  ASSERT_TRUE(update.waitForFinished());
  ASSERT_EQ(update.exitCode(), 0) << update.readAllStandardError().toStdString();

  std::set<std::tuple<QString, QString, QString>> written, said;
  for (const Message& m : messages) written.emplace(m.context, m.source, m.comment);
  for (const Message& m : read(copy)) {
    said.emplace(m.context, m.source, m.comment);
    EXPECT_TRUE(m.finished && written.contains({m.context, m.source, m.comment}))
        << qPrintable(m.named()) << " has no translation: run resources/translations/update.sh, and add it";
  }
  for (const Message& m : messages)
    EXPECT_TRUE(said.contains({m.context, m.source, m.comment}))
        << qPrintable(m.named()) << " is said no more: run resources/translations/update.sh";
}

INSTANTIATE_TEST_SUITE_P(Of, Translations, testing::ValuesIn(translatedLanguages()),
                         [](const auto& language) { return language.param; });

TEST(PosterTexts, HaveTheWordsOfEveryBundledKindOfDevice) {
  const std::set<std::string> told(std::begin(poster::texts::kKinds), std::end(poster::texts::kKinds));
  std::set<std::string> kinds;
  for (const layout::DeviceKind& kind : files::bundledDeviceKinds().all()) {
    kinds.insert({kind.label, kind.instruction});
    EXPECT_TRUE(told.contains(kind.label)) << kind.label;
    EXPECT_TRUE(told.contains(kind.instruction)) << kind.instruction;
  }
  EXPECT_EQ(told, kinds);
}

// What is compiled in is what is written.
TEST_P(Translations, AreWhatAPosterSays) {
  const poster::Language language(GetParam());
  std::size_t compared = 0;
  for (const Message& m : messages)
    if (m.context == "poster") {
      EXPECT_EQ(language.say(m.source.toUtf8().constData()), m.forms.front());
      ++compared;
    }
  EXPECT_GT(compared, 50u);
}

}  // namespace
}  // namespace stopwalk::translations
