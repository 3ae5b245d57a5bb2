BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Measure-LayerSymmetry' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $folder 'hero.psd'))
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'tells the figure first, then pairs and central parts front to back' {
        $results = @($file | Measure-LayerSymmetry)
        $results | ForEach-Object { "$($_.Kind) $($_.LayerPath)" } | Should -Be @(
            'Figure ', 'Pair Figure/Arm L/Arm L', 'Pair Figure/Head/Eye L/Eye L', 'Central Figure/Head/Head', 'Central Figure/Body')
        $results[1].Note | Should -BeLike '*opposite is nowhere*'
        $results[1].Iou | Should -BeNullOrEmpty
        $results[0].CanvasAxis | Should -Be $file.Axis
    }

    It 'sees that mirrored parts agree exactly, edits that are pending included' {
        $pairs = @($file | Copy-LayerMirror | Measure-LayerSymmetry | Where-Object Kind -EQ Pair)
        $pairs.Count | Should -Be 2
        foreach ($pair in $pairs) {
            ($pair.Iou, $pair.ColorDifference, $pair.AxisOffset, $pair.WidthDifference) | Should -Be @(100, 0, 0, 0)
            $pair.OppositePath | Should -Match ' R$'
        }
    }

    It 'sees how far the figure stands off the axis' {
        $before = ($file | Measure-LayerSymmetry)[0]
        $after = ($file | Set-LayerCanvas -CenterOn ($file.Axis - 3) | Measure-LayerSymmetry)[0]
        $after.AxisOffset - $before.AxisOffset | Should -BeGreaterThan 2.9
        $after.AxisOffset - $before.AxisOffset | Should -BeLessThan 3.1
    }

    It 'measures chosen parts without the figure' {
        ($file | Measure-LayerSymmetry -Name Body).LayerPath | Should -Be 'Figure/Body'
        ($file | Get-Layer -LiteralLayerPath 'Figure/Head' | Measure-LayerSymmetry).LayerPath | Should -Be 'Figure/Head/Eye L/Eye L', 'Figure/Head/Head'
    }

    It 'shows a table with units that fits 120 columns, also of what came from another process' {
        $results = $file | Copy-LayerMirror | Measure-LayerSymmetry
        $text = $results | Out-String -Width 120
        $text | Should -Match 'IoU \(%\)\s+Best \(%\)\s+dE00\s+Axis \(px\)\s+Off \(px\)\s+Tilt \(deg\)'
        $text | Should -Match '\(whole figure\)'
        [System.Management.Automation.PSSerializer]::Deserialize([System.Management.Automation.PSSerializer]::Serialize($results)) | Out-String -Width 120 | Should -Be $text
    }

    It 'goes to CSV and JSON as plain facts' {
        $json = $file | Measure-LayerSymmetry | ConvertTo-Json | ConvertFrom-Json
        $json[4].LayerPath | Should -Be 'Figure/Body'
        ($file | Measure-LayerSymmetry | ConvertTo-Csv -NoTypeInformation)[0] | Should -Match '"Kind","LayerPath","LayerNumber","OppositePath"'
    }

    It 'writes a picture of where the halves differ' {
        $picture = $file | Measure-LayerSymmetry -Heatmap pictures
        $picture | Should -BeOfType IO.FileInfo
        $picture.FullName | Should -Be (Join-Path $folder 'pictures/hero.png')
        [IO.File]::ReadAllBytes($picture.FullName)[1..3] | Should -Be 80, 78, 71 -Because 'a PNG says so (ISO/IEC 15948)'
        $again = Get-Streams { $file | Measure-LayerSymmetry -Heatmap pictures }
        $again.Errors.Exception.Message | Should -BeLike '*exists*-Force*'
        ($file | Measure-LayerSymmetry -Heatmap pictures -Force).Name | Should -Be 'hero.png'
        ($file | Measure-LayerSymmetry -Heatmap map.png).Name | Should -Be 'map.png'
    }

    It 'writes nothing with -WhatIf' {
        $file | Measure-LayerSymmetry -Heatmap pictures -WhatIf | Should -BeNullOrEmpty
        Test-Path pictures | Should -BeFalse
    }

    It 'draws the whole figure or nothing' {
        { $file | Measure-LayerSymmetry -Heatmap pictures -Name Body } | Should -Throw '*whole figure*'
    }

    It 'goes on after a file whose pixels cannot be read' {
        $damaged = Join-Path $folder 'damaged.psd'
        [IO.File]::Copy("$PSScriptRoot/../Fixtures/damaged/rectangle-huge.psd", $damaged, $true)
        $result = Get-Streams { Get-LayerFile $damaged, $file.Path | Measure-LayerSymmetry }
        $result.Errors.Count | Should -Be 1
        $result.Output.Count | Should -Be 5
    }
}
