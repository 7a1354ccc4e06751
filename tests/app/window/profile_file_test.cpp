// The rules of the house go out as a profile file that says the same, and a file of the shop is chosen.
#include <sstream>

#include "app/command_line/run.h"
#include "app/panels/rules/rules_panel.h"
#include "app/window/profile_for.h"
#include "core/files/profile_reader.h"
#include "tests/app/window/auditing.h"

namespace stopwalk::window {
namespace {

class ProfileFile : public InTheAuditPlace {
 protected:
  panels::RulesPanel& rules() { return window->auditPlace().rules(); }
  // A limit, a rule that is off, and one that is less severe.
  void keepOtherRules() {
    layout::Layout other = layout();
    layout::HouseRule limit, off, severity;
    limit.rule = "stop-too-far";
    limit.limit = 4.2;
    limit.reason = "helpers are \"slow\" here";
    off.rule = "hidden-stop";
    off.on = false;
    severity.rule = "no-stop";
    severity.severity = audit::Severity::Note;
    other.house_rules = {limit, off, severity};
    ASSERT_TRUE(window->document().edited().apply({"Change rules", other}));
  }
  void save(const QString& to) {
    asker.file = to;
    rules().saveVerb().trigger();
  }
  void choose(const QString& from) {
    asker.file = from;
    rules().fileVerb().trigger();
  }
  QByteArray textOf(const QString& name) {
    QFile read(name);
    return read.open(QFile::ReadOnly) ? read.readAll() : QByteArray();
  }
  void put(const QString& name, const QByteArray& text) {
    QFile written(name);
    ASSERT_TRUE(written.open(QFile::WriteOnly));
    written.write(text);
  }
  std::string printed(const QString& profile) {
    std::istringstream in;
    std::ostringstream out, err;
    app::run({"profile", "show", profile.toStdString()}, {in, out, err, false, false, 100});
    EXPECT_EQ(err.str(), "");
    return out.str();
  }

  const QString file = pathOf("our-rules.yaml");
};

TEST_F(ProfileFile, WhatIsSavedHasTheSameLimitsForTheReaderAndTheCommandLine) {
  keepOtherRules();
  save(file);
  ASSERT_TRUE(QFile::exists(file)) << asker.said.join(' ').toStdString();
  EXPECT_TRUE(window->sentence().contains("our-rules.yaml"));
  const audit::Profile kept = audit::withHouseRules(profileFor(layout(), path).profile, layout().house_rules);
  const auto read = files::readProfile({"our-rules.yaml", textOf(file).toStdString()},
                                       [](const auto&, const auto&) { return std::nullopt; });
  ASSERT_TRUE(read.value);
  EXPECT_EQ(read.value->settings, kept.settings);
  EXPECT_EQ(read.value->inspection, kept.inspection);
  EXPECT_EQ(read.value->of(*audit::findRule("stop-too-far")).limit(), 4.2);
  EXPECT_EQ(read.value->id, "our-rules");
  EXPECT_EQ(read.value->name, "Rules of Old Tram Depot Repair Workshop");
  EXPECT_EQ(printed(file), textOf(file).toStdString()) << "as the command line writes it";
}

TEST_F(ProfileFile, IsWrittenOverNoLayoutAndNothingThatTheLayoutIsMadeWith) {
  const QByteArray before = bytes();
  put(pathOf("other.yaml"), "stopwalk_layout: 1\n");
  for (const QString& target :
       {path, pathOf("shop.inspections.jsonl"), pathOf("other.yaml"), pathOf("device-kinds.yaml")}) {
    asker.said.clear();
    save(target);
    EXPECT_EQ(asker.said.size(), 1) << target.toStdString();
  }
  EXPECT_EQ(bytes(), before);
  EXPECT_EQ(textOf(pathOf("other.yaml")), "stopwalk_layout: 1\n");
  EXPECT_FALSE(QFile::exists(pathOf("device-kinds.yaml")));
}

TEST_F(ProfileFile, OneBesideTheLayoutIsChosenAndUndone) {
  put(file, "stopwalk_profile: 1\nid: our-rules\nname: Ours\nrules: {stop-too-far: {limit: 3.5}}\n");
  choose(file);
  EXPECT_EQ(layout().profile, "our-rules.yaml");
  EXPECT_TRUE(rules().head().contains("Ours")) << rules().head().toStdString();
  EXPECT_EQ(rules().profileBox()->currentText(), "our-rules.yaml");
  history().undo();
  EXPECT_EQ(layout().profile, "teaching-shop");
  EXPECT_FALSE(rules().head().contains("Ours"));
}

TEST_F(ProfileFile, OneThatCannotBeReadOrDoesNotGoWithTheLayoutIsNotChosen) {
  put(file, "stopwalk_profile: 1\nid: our-rules\nrules: {stop-too-far: {limit: far}}\n");
  choose(file);
  ASSERT_FALSE(asker.said.isEmpty());
  EXPECT_TRUE(asker.said.last().contains("line 3")) << asker.said.last().toStdString();
  QTemporaryDir elsewhere;
  put(elsewhere.filePath("theirs.yaml"), "stopwalk_profile: 1\nid: theirs\n");
  choose(elsewhere.filePath("theirs.yaml"));
  EXPECT_TRUE(asker.said.last().contains("folder of the layout")) << asker.said.last().toStdString();
  EXPECT_EQ(layout().profile, "teaching-shop");
}

TEST_F(ProfileFile, ALimitThatIsBeingTypedIsInWhatIsSaved) {
  rules().choose("stop-too-far");
  QLineEdit* limit = rules().limits().front()->line();
  limit->setFocus();
  limit->selectAll();
  type("4.2 m");
  save(file);
  const auto read = files::readProfile({"our-rules.yaml", textOf(file).toStdString()},
                                       [](const auto&, const auto&) { return std::nullopt; });
  ASSERT_TRUE(read.value);
  EXPECT_EQ(read.value->of(*audit::findRule("stop-too-far")).limit(), 4.2);
}

}  // namespace
}  // namespace stopwalk::window
