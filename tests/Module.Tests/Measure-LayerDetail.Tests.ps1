BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Measure-LayerDetail' {
    BeforeEach {
        $folder = New-Item -ItemType Directory -Path (Join-Path $TestDrive ([guid]::NewGuid()))
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'hero.psd'))
    }

    It 'tells the ratio for the screen that is named' {
        $detail = $file | Measure-LayerDetail -Framing Figure -Screen 1920x1080
        $detail.Ratio | Should -Be ([Math]::Min(1920 / $detail.Width, 1080 / $detail.Height))
        $detail.ShowsPixels | Should -BeTrue
        $detail.NeededCanvasWidth % 2 | Should -Be 0
    }

    It 'looks at chosen layers one by one, on every screen' {
        $details = $file | Get-Layer -Name 'Body' | Measure-LayerDetail -Screen 'Full HD', 3840x2160
        $details.ScreenWidth | Should -Be 1920, 3840
        $details[1].Ratio | Should -Be (2 * $details[0].Ratio)
        $details.LayerPath | Sort-Object -Unique | Should -Be 'Figure/Body'
    }

    It 'refuses screens that are none, and framings together with layers' {
        { $file | Measure-LayerDetail -Screen wide } | Should -Throw -ErrorId 'NoSuchScreen*'
        { $file | Measure-LayerDetail -Framing Face -Name Body } | Should -Throw -ErrorId 'FramingOrLayers*'
    }

    It 'says why nothing can be told of tiny parts' {
        $parts = $file | Measure-LayerDetail -Enlarged
        $parts.Count | Should -Be 4
        $parts[0].Factor | Should -BeNullOrEmpty
        $parts[0].Reason | Should -BeLike 'It is too small*'
    }

    It 'writes what the screen shows' {
        $picture = $file | Measure-LayerDetail -Framing Figure -Screen 1280x720 -Picture $folder
        $picture.Name | Should -Be 'hero-figure-1280x720.png'
        (Get-Streams { $file | Measure-LayerDetail -Framing Figure -Screen 1280x720 -Picture $folder }).Errors[0].Exception.Message | Should -BeLike '*-Force*'
    }
}
