package water
import ("testing";"fmt";"filmfurrow/rules/unit")
func TestZ(t *testing.T){
	in := d1()
	p,pr := Make(in)
	fmt.Println(pr)
	show(p)
}
func show(p Plan){
	fmt.Println("VERDICT",p.Verdict); for _,b:=range p.Because{fmt.Println("  ",b.In(unit.US))}
	for _,m:=range p.Missing{fmt.Println(" missing",m)}
	for _,a:=range p.Assumed{fmt.Println(" assumed",a.Field,a.Value.In(unit.US))}
	for _,m:=range p.Warnings{fmt.Println(" warn",m.Severity,m.ID,m.Says.In(unit.US), m.Says.Complete())}
	if p.Demand!=nil{ for _,m:=range p.Demand.Months{fmt.Printf("%+v\n",m)}; fmt.Printf("%+v\n",p.Demand.Peak); fmt.Println(p.Demand.Total,p.Demand.InField)}
	fmt.Printf("soil %+v\n",p.Soil)
	t:=p.Tape; pp:=t.Profile; t.Profile=nil
	fmt.Printf("tape %+v\n",t); if pp!=nil{ pp.Points=nil; fmt.Printf("profile %+v\n",*pp)}
	fmt.Printf("supply %+v\n",p.Supply)
	fmt.Printf("schedule %+v\n",p.Schedule)
	for _,o:=range p.WaysOut{fmt.Println(" way",o.ID,o.Fits,o.Effort,o.Change.In(unit.US),"|",o.Result.In(unit.US))}
	fmt.Printf("filter %+v quality %+v\n",p.Filter,p.Quality)
	fmt.Printf("feeding %+v\n",p.Feeding)
	for _,c:=range p.Checks{fmt.Println(" check",c.Agrees,c.Says.In(unit.US))}
	for _,s:=range p.Steps{fmt.Print(" step ",s.Title,": ",s.Formula," = ",s.Result.Name," ",s.Result.Quantity.In(unit.US),"  <- "); for _,i:=range s.Inputs{fmt.Print(i.Name," ",i.Quantity.In(unit.US),"; ")}; fmt.Println("[",s.Source,"]")}
	fmt.Println(len(p.Cautions))
}
func d1() Input{
	year := Year{1,1.5,2.4,3.6,4.5,5.1,5.0,4.4,3.4,2.2,1.4,1}
	return Input{PlantOn:unit.On(2027,5,1), Coefficients:Known(Coefficients{.6,1.15,.8}), Stages:Known([4]unit.Days{30,40,45,30}), Season:Known(unit.Days(120)),
	FilmCut:Known(Range{10,30}), RootDepth:Known(unit.Metres(.7)), Depletion:Known(.4), SaltThreshold:Known(unit.DecisiemensPerMetre(2.5)), SaltSlope:Known(unit.Percent(9.9)),
	Usual:Known(year), Texture:"sandy-loam", Beds:Known(10), BedLength:Known(unit.FromFeet(300)), BedCentres:Known(unit.FromFeet(6)), BedTop:Known(unit.FromInches(30)), Slope:0.5,
	Lines:1, Spacing:unit.FromInches(12), TapeFlow:unit.FromGallonsPerMinutePer100Feet(.45), Supply:"well", Flow:Known(unit.FromGallonsPerMinute(8)), Lift:Known(unit.Metres(10)), Header:Known(unit.Metres(50)), Hours:Known(unit.Hours(4)),
	Salt:Known(unit.DecisiemensPerMetre(.6)), Acidity:Known(7.2), Iron:Known(unit.MilligramsPerLitre(.3)), Hardness:Known(unit.MilligramsPerLitre(150)),
	FeedRate:Known(1.12),FeedGrade:Known(unit.Percent(20)),Stock:Known(.12),Injector:Known(100.)}
}
