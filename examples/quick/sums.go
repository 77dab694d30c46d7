package main

import (
	"context"
	"reflect"
	"time"

	"example.com/clothyard/buttons"
	"example.com/clothyard/gather"
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/units/stitch"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/yardage"
	"example.com/clothyard/yardage/layout"
)

// sums is every noun under the name that people call it by. A new noun is a new
// line.
func sums() []sum {
	return []sum{
		bound[seam.Spec]("seam.seam"),
		bound[seam.Dart]("seam.dart"),
		bound[seam.Edge]("seam.edge"),
		bound[seam.Match]("seam.match"),
		bound[seam.Assembly]("seam.assembly"),
		bound[seam.Meeting]("seam.meeting"),
		bound[seam.Letting]("seam.letting"),
		bound[seam.Lengthening]("seam.lengthening"),
		bound[seam.Binding]("seam.binding"),
		bound[seam.Row]("seam.row"),
		bound[seam.Pivot]("seam.pivot"),
		bound[seam.Favour]("seam.favour"),
		bound[seam.Roll]("seam.roll"),
		bound[seam.Easing]("seam.easing"),
		bound[hem.Spec]("hem.hem"),
		bound[hem.Mitre]("hem.mitre"),
		bound[hem.Casing]("hem.casing"),
		bound[hem.Tucks]("hem.tucks"),
		bound[gather.Strip]("gather.strip"),
		bound[gather.Ruffle]("gather.ruffle"),
		bound[gather.Cuff]("gather.cuff"),
		bound[buttons.Row]("buttons.row"),
		bound[buttons.Hole]("buttons.hole"),
		bound[buttons.Lap]("buttons.lap"),
		bound[buttons.Stock]("buttons.stock"),
		bound[yardage.Width]("yardage.width"),
		bound[yardage.Remnant]("yardage.remnant"),
		bound[yardage.Purchase]("yardage.purchase"),
		bound[yardage.Price]("yardage.price"),
		bound[yardage.Panels]("yardage.panels"),
		bound[yardage.Bias]("yardage.bias"),
		bound[yardage.Swatch]("yardage.swatch"),
		boundBy("layout.lay", lay),
		bound[strip.Spec]("strip.strip"),
		bound[strip.Binding]("strip.binding"),
		bound[stitch.Density]("stitch.density"),
		bound[stitch.Setting]("stitch.setting"),
		bound[stitch.Thread]("stitch.thread"),
		bound[stitch.Garment]("stitch.garment"),
	}
}

// patience is how long a lay is looked for, whatever work is asked; the lay found
// by then is the answer, and says that it was stopped.
const patience = time.Minute

func lay(s layout.Spec) (layout.Plan, error) {
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	return s.Plan(ctx)
}

// A sum is a noun of the library under the name that people call it by.
type sum struct {
	name string
	spec reflect.Type
	plan func(spec any) (answer, error)

	drawn bool // its answer is a picture
}

// A planner is a Spec with its Plan.
type planner[P answer] interface{ Plan() (P, error) }

// bound makes a sum of any Spec.
func bound[S planner[P], P answer](name string) sum { return boundBy(name, S.Plan) }

func boundBy[S any, P answer](name string, plan func(S) (P, error)) sum {
	_, drawn := any(*new(P)).(picture)
	return sum{name, reflect.TypeFor[S](), func(spec any) (answer, error) {
		p, err := plan(spec.(S))
		if err != nil {
			return nil, err
		}
		return p, nil
	}, drawn}
}

func find(name string) (sum, bool) {
	for _, s := range sums() {
		if s.name == name {
			return s, true
		}
	}
	return sum{}, false
}
