#include <QBuffer>
#include <memory>

#include "app/command_line/audit_layout.h"
#include "app/command_line/commands.h"
#include "app/command_line/input.h"
#include "app/command_line/output.h"
#include "app/command_line/painting.h"
#include "app/command_line/profiles.h"
#include "app/poster/report_html.h"
#include "core/files/sha256.h"

namespace stopwalk::app {
namespace {

struct Options {
  AuditOptions audit;
  std::string layout, font;
  std::string paper = "a4";
};

bool isHtml(const std::string& file) {
  return file.ends_with(".html") || file.ends_with(".htm");
}

QString asAddress(const QImage& image) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return "data:image/png;base64," + QString::fromLatin1(buffer.data().toBase64());
}

Exit report(const Options& options, Session& session) {
  startPainting();
  const auto family = familyOf(options.font, session);
  if (!family) return Exit::Wrong;
  const std::string& out = options.audit.out;
  if (wouldReplaceInput(options.layout, out, session)) return Exit::Wrong;
  ChosenProfile asked;
  if (!options.audit.profile.empty()) {
    asked = chooseProfile(options.audit.profile, session);
    if (!asked.profile) return asked.exit;
  }
  const AuditedInput audited = auditInput(options.layout, options.audit, asked.profile, session);
  if (!audited.report) return audited.exit;

  const Input& input = audited.input;
  if (wouldReplaceInput(input, out, session)) return Exit::Wrong;
  const std::string sha256 = files::sha256(input.text);
  const poster::Shop shop(*input.layout, input.kinds, audited.profile, sha256, audited.failed);
  const poster::ReportMatter matter{shop,       input.kinds,     audited.profile,     *audited.report,
                                    input.file, audited.records, QDate::currentDate()};
  if (isHtml(out))
    return writeResult(poster::reportHtml(matter, asAddress(poster::planWithWalks(matter))).toStdString(),
                       out, session);
  QString why;
  const QByteArray pdf = poster::reportPdf(matter, *poster::paperOf(options.paper), *family, why);
  if (why.isEmpty()) return writeResult(pdf.toStdString(), out, session);
  session.console.err << "stopwalk: " << why.toStdString() << "\n";
  return Exit::NoFile;
}

}  // namespace

void addReport(CLI::App& program, Session& session) {
  const auto options = std::make_shared<Options>();
  CLI::App& c =
      *program.add_subcommand("report", "The whole audit on paper, for an insurer or a safety office");
  c.add_option("LAYOUT", options->layout, "A layout file; - is standard input")->required();
  c.add_option("--profile", options->audit.profile,
               "A bundled profile or a profile file; default: the layout's")
      ->check(saysSomething("the name of a profile"));
  c.add_option("--hours", options->audit.hours, "Doors as in opening hours, or after them")
      ->check(CLI::IsMember({"open", "after"}))
      ->capture_default_str();
  c.add_option("--paper", options->paper, "The sheet of a PDF")
      ->check(CLI::IsMember({"a4", "letter"}))
      ->capture_default_str();
  c.add_option("--font", options->font, "The family of the letters; default: the system's own");
  addKindsOption(c, options->audit.kinds);
  c.add_option("--out", options->audit.out,
               "File to write, whole or not at all: a name that ends with .html is a page, any other a PDF; "
               "- is standard "
               "output")
      ->required()
      ->check(saysSomething("the name of a file"));
  setExample(c,
             "stopwalk report sample-layouts/tram-depot.layout.yaml --out audit.pdf\n\n"
             "Ends with 0 if it was written, whatever it found, 2 if input or usage is wrong, 3 if a file "
             "cannot be read "
             "or\nwritten.");
  c.callback(
      [options, &session] { session.command = [options, &session] { return report(*options, session); }; });
}

}  // namespace stopwalk::app
