#include "app/poster/page.h"

#include <QStringList>
#include <algorithm>
#include <iterator>

namespace stopwalk::poster {

QString Document::title() const {
  return of.isEmpty() ? heading : heading + ": " + of;
}

Document joined(std::vector<Document> documents) {
  Document all = documents.front();
  QStringList of, subjects;
  for (const Document& document : documents) {
    of << document.of;
    subjects << document.subject;
  }
  all.of = of.join(", ");
  all.subject = subjects.join("\n\n");
  for (std::size_t i = 1; i < documents.size(); ++i)
    std::ranges::move(documents[i].pages, std::back_inserter(all.pages));
  return all;
}

}  // namespace stopwalk::poster
