#include "app/rounds/reasons.h"

#include <QCoreApplication>

#include "app/rounds/words.h"

namespace stopwalk::rounds {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(stopwalk::rounds::Reasons)
};

}  // namespace

QStringList namesOf(const layout::Layout& layout, const std::vector<std::string>& machines) {
  QStringList names;
  for (const std::string& id : machines) names << machineName(layout, id);
  return names;
}

// No default here or below: the compiler asks for the words of a new reason.
QString reasonText(const inspection::NotCounted& pass, const QStringList& machines) {
  switch (pass.why) {
    case inspection::Doubt::NotAsWritten:
      return Words::tr("the records are not as they were written");
    case inspection::Doubt::AfterToday:
      return Words::tr("it is dated, or was entered, on a day that is still to come");
    case inspection::Doubt::TakenAway:
      return Words::tr("it was made before the device was recorded as taken away");
    case inspection::Doubt::NotNamed:
      return Words::tr("it did not test %1, which the device stops now").arg(machines.join(Words::tr(", ")));
  }
  return {};
}

QString reasonText(files::Wrong what) {
  switch (what) {
    case files::Wrong::Reformatted:
      return Words::tr(
          "the file was rewritten by a formatter: one record a line is expected; take the file back from a "
          "copy");
    case files::Wrong::Utf16:
      return Words::tr(
          "the file was saved as UTF-16: one record a line is expected, as UTF-8; take the file back from a "
          "copy");
    case files::Wrong::NoEnd:
      return Words::tr("it does not end as a record does");
    case files::Wrong::Changed:
      return Words::tr("it was changed after it was written");
    case files::Wrong::NoRecord:
      return Words::tr("what it says is no record of this format, or more than one");
    case files::Wrong::OutOfPlace:
      return Words::tr("lines before it were changed, removed, put in or moved");
    case files::Wrong::NoBreak:
      return Words::tr("the line break behind it is missing");
  }
  return {};
}

QString reasonText(const inspection::ShortOfPass& pass, const QStringList& machines) {
  switch (pass.left_open.value()) {
    case inspection::LeftOpen::Correction:
      return Words::tr("a correction undoes no failure");
    case inspection::LeftOpen::NotPressed:
      return Words::tr(
          "it was not pressed, or did not stay in, or what it stops did not stop or stay stopped");
    case inspection::LeftOpen::InDoubt:
      return Words::tr("this check counts for nothing: %1").arg(reasonText(*pass.not_counted, machines));
    case inspection::LeftOpen::NotSeen:
      return Words::tr("it does not say that it was looked at");
    case inspection::LeftOpen::NotNamed:
      return Words::tr("it did not test %1").arg(machines.join(Words::tr(", ")));
    case inspection::LeftOpen::NotSurelyAfter:
      return Words::tr("by the times given it is not sure that this was after check %1")
          .arg(pass.failed->check);
    case inspection::LeftOpen::SamePerson:
      if (!inspection::isFinderKnown(*pass.failed))
        return Words::tr(
            "it was found by somebody whose name cannot be read: two different people are to pass it, in a "
            "check each");
      return Words::tr("another person than %1, who found it, is to pass it")
          .arg(QString::fromStdString(pass.failed->found_by));
  }
  return {};
}

}  // namespace stopwalk::rounds
