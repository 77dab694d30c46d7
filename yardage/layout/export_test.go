package layout

// Rests is what is left over of a plan made by hand.
func (p Plan) Rests() []Rest { return p.leftover() }
