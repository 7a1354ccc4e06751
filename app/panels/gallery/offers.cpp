#include "app/panels/gallery/offers.h"

#include <QCoreApplication>

namespace stopwalk::panels {

namespace {

using What = plan::Choice::What;

class Offers {
  Q_DECLARE_TR_FUNCTIONS(Gallery)

 public:
  static OfferGroup rooms() {
    return {
        tr("Rooms and doors"),
        {{{What::Room},
          tr("Room"),
          tr("Drag from one corner to the opposite one, or type the two sides."),
          "room"},
         {{What::RoomByCorners}, tr("Room by corners"), tr("Click each corner in turn."), "outline"},
         {{What::Door}, tr("Door"), tr("Click a wall; it leads to the room on the other side."), "door"}}};
  }

  static OfferGroup machines(const layout::MachineTemplates& templates) {
    OfferGroup group{tr("Machines"), {}};
    for (const layout::MachineTemplate& t : templates.all())
      group.offers.push_back({{What::Machine, t.key},
                              QString::fromStdString(t.label.empty() ? t.key : t.label),
                              contents(t),
                              "machine"});
    return group;
  }

  static OfferGroup stations() {
    return {tr("Stations"),
            {{{What::Station, "operator"},
              tr("Operator"),
              tr("Where the one who works the machine stands."),
              "station-operator"},
             {{What::Station, "helper"},
              tr("Helper"),
              tr("Where a second person stands at the work."),
              "station-helper"},
             {{What::Station, "setter"},
              tr("Setter"),
              tr("Where somebody stands to set the machine up."),
              "station-setter"},
             {{What::Station, "instructor"},
              tr("Instructor"),
              tr("Where somebody stands to teach or watch."),
              "station-instructor"}}};
  }

  static OfferGroup devices(const layout::DeviceKinds& kinds) {
    OfferGroup group{tr("Stop devices"), {}};
    for (const layout::DeviceKind& k : kinds.all())
      group.offers.push_back({{What::Device, k.key},
                              QString::fromStdString(k.label.empty() ? k.key : k.label),
                              k.counts_as_stop ? QString::fromStdString(k.instruction) : tr("Stops nothing."),
                              k.symbol.empty() ? k.key : k.symbol,
                              plan::groundOf(k)});
    return group;
  }

  static OfferGroup phones() {
    return {
        tr("Phones"),
        {{{What::Phone}, tr("Phone"), tr("Click the wall that it hangs on."), "phone", plan::Ground::Phone}}};
  }

  static OfferGroup fixtures() {
    return {tr("Benches and columns"),
            {{{What::Fixture, "bench"}, tr("Bench"), tr("Solid, and no machine."), "bench"},
             {{What::Fixture, "column"}, tr("Column"), tr("Solid, and no machine."), "column"},
             {{What::Fixture, "rack"}, tr("Rack"), tr("Solid, and no machine."), "rack"}}};
  }

  static OfferGroup notes() {
    return {tr("Notes and checks"),
            {{{What::Note}, tr("Note"), tr("Words on the plan, with a line to what they are about."), "note"},
             {{What::TapeCheck},
              tr("Tape check"),
              tr("A distance taped on the floor, held against the computed one: click where it was taped "
                 "from, then to."),
              "tape-check"}}};
  }

  static OfferGroup underlay() {
    return {tr("Underlay"),
            {{{What::ScaleUnderlay},
              tr("Scale the underlay"),
              tr("Click two points of the picture, and type how far they are apart."),
              "underlay"}}};
  }

 private:
  static QString contents(const layout::MachineTemplate& t) {
    return tr("Comes with its usual stations (%1) and devices (%2).")
        .arg(t.stations.size())
        .arg(t.devices.size());
  }
};

}  // namespace

std::vector<OfferGroup> offersOf(const plan::Catalogue& catalogue) {
  return {Offers::rooms(),    Offers::machines(catalogue.templates),
          Offers::stations(), Offers::devices(catalogue.kinds),
          Offers::phones(),   Offers::fixtures(),
          Offers::notes(),    Offers::underlay()};
}

}  // namespace stopwalk::panels
