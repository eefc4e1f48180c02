//go:build !js

package browsertest

import (
	"context"
	"time"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/storage"
	"github.com/chromedp/chromedp"
)

// call runs one command of the browser's debugging protocol.
func call[P, R any](p *Page, command cdp.Command[P, R], params P) R {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	result, err := chromedp.Call(ctx, command, params)
	if err != nil {
		p.t.Fatal(err)
	}
	return result
}

// InstallProblems are the browser's reasons for not offering to install the
// site; none means that it would.
func (p *Page) InstallProblems() []string {
	p.t.Helper()
	var list []string
	for _, e := range call(p, page.GetInstallabilityErrors, cdp.Empty{}).InstallabilityErrors {
		list = append(list, e.ErrorID)
	}
	return list
}

// Position lets the site ask where the device is, and says where; or, without
// allowed, has the owner refuse.
func (p *Page) Position(allowed bool, latitude, longitude float64) {
	p.t.Helper()
	setting := cdpbrowser.PermissionSettingDenied
	if allowed {
		setting = cdpbrowser.PermissionSettingGranted
	}
	call(p, cdpbrowser.SetPermission, cdpbrowser.SetPermissionParams{Permission: &cdpbrowser.PermissionDescriptor{Name: "geolocation"}, Setting: setting,
		Origin: "http://" + p.b.addr, BrowserContextID: chromedp.FromContext(p.ctx).BrowserContextID})
	accuracy := 10.0
	call(p, emulation.SetGeolocationOverride, emulation.SetGeolocationOverrideParams{Latitude: &latitude, Longitude: &longitude, Accuracy: &accuracy})
}

// ForgetHTTP empties the browser's own HTTP cache, not the caches that the
// site's worker keeps.
func (p *Page) ForgetHTTP() {
	p.t.Helper()
	call(p, network.ClearBrowserCache, cdp.Empty{})
}

// Room limits what the site may keep on the device, in bytes.
func (p *Page) Room(bytes float64) {
	p.t.Helper()
	call(p, storage.OverrideQuotaForOrigin, storage.OverrideQuotaForOriginParams{Origin: "http://" + p.b.addr, QuotaSize: &bytes})
}

// line makes the page's connection slow.
func (p *Page) line(bitsPerSecond float64, latency time.Duration) {
	p.t.Helper()
	call(p, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
		MatchedNetworkConditions: []*network.Conditions{{
			Latency:            float64(latency.Milliseconds()),
			DownloadThroughput: bitsPerSecond / 8,
			UploadThroughput:   bitsPerSecond / 8,
		}},
	})
}
